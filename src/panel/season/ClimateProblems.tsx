import * as texts from "./words.ts";

/** Problems listed before the rest is counted only. */
const FIRST_PROBLEMS = 5;

/** Why temperatures could not be taken, each with its place. */
export function ClimateProblems({ problems }: { readonly problems: readonly string[] }) {
  if (problems.length === 0) return null;
  return (
    <div className="field-reason" role="alert">
      {problems.slice(0, FIRST_PROBLEMS).map((problem) => (
        <p key={problem}>{problem}</p>
      ))}
      {problems.length > FIRST_PROBLEMS && <p>{texts.andMore(problems.length - FIRST_PROBLEMS)}</p>}
    </div>
  );
}
