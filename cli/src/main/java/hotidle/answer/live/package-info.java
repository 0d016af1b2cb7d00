/** What the live page is answered, as records that become JSON. */
package hotidle.answer.live;
