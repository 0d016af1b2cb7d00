/** Gear trains: planetary sets that share members, what joins them, and the speeds and torques that follow. */
package hotidle.geartrain;
