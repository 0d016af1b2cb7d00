/** What {@code torque} answers: the engine torque that each range and build holds, and what gives first. */
package hotidle.answer.torque;
