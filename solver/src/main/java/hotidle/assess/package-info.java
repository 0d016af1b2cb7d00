/** What a state means, as values: roles of the parts, figures, oil budget, margins, doubts. */
package hotidle.assess;
