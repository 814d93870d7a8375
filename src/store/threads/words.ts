/** What is said of work on a thread of its own that could not begin. */

export const arrangerNotStarted = "The arranger could not be started.";
export const proofNotStarted = "The proof could not be started.";
export const printerNotStarted =
  "The part of the program that prints could not be started. Load the page anew; the plan is kept.";
