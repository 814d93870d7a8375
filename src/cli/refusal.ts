import { type Problem, problemText } from "../core/model/problem.ts";

/** Input or usage that cannot be worked with: its lines go to stderr, and the exit code is 2. */
export class Refusal extends Error {
  constructor(lines: readonly string[]) {
    super(lines.join("\n"));
  }
}

export function refuseProblems(problems: readonly Problem[]): Refusal {
  return new Refusal(problems.map(problemText));
}
