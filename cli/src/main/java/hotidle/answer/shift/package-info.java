/** What {@code shift} answers: the heat of the clutch that closes in each shift up, and of the lockup. */
package hotidle.answer.shift;
