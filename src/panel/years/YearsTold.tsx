import type { JudgedYears } from "../../core/renewal/judge-years.ts";
import { type YearsNames, faultWords } from "../../core/renewal/fault-words.ts";
import {
  cautionsOf,
  limitWords,
  proofLines,
  verdictWords,
} from "../../core/renewal/years-words.ts";
import type { YearsAnswered } from "../../store/threads/years-worker.ts";
import { yearsPageWords as words } from "./years-page-words.ts";

interface YearsToldProps {
  readonly judged: JudgedYears;
  readonly names: YearsNames;
  /** What is proven of the years shown; null: nothing. */
  readonly answer: YearsAnswered | null;
}

/** Whether the years can be followed, what is proven, and what they rest on. */
export function YearsTold({ judged, names, answer }: YearsToldProps) {
  const cautions = cautionsOf(judged, names);
  const isWhole = judged.faults.length === 0;
  const doubtful = names.years.rows.some(({ standing }) => standing !== "keeps");
  // An empty page has not gone wrong: it is said what to do, not all that would die of it.
  if (names.years.years.every((bits) => bits === 0)) {
    return (
      <section className="years-told">
        <p role="status">{words.notLaidYet}</p>
        <p className="soft">{limitWords(names)}</p>
      </section>
    );
  }
  return (
    <section className="years-told">
      <div role="status">
        <p className={isWhole ? (doubtful ? "" : "clear-text") : "conflict-text"}>
          {isWhole ? (doubtful ? "! " : "✓ ") : "✕ "}
          {verdictWords(judged, names)}
        </p>
        {answer &&
          proofLines(answer, names).map(({ text, isClash }) => (
            <p key={text} className={isClash ? "" : "soft"}>
              {text}
            </p>
          ))}
      </div>
      {judged.faults.length > 0 && (
        // Many are read by scrolling, with the keys too: the years themselves stay in sight.
        <div className="years-against" tabIndex={0}>
          <ul aria-label={words.against}>
            {judged.faults.map((fault) => {
              const told = faultWords(fault, names);
              return <li key={told}>{told}</li>;
            })}
          </ul>
        </div>
      )}
      {cautions.length > 0 && (
        <section aria-label={words.cautions}>
          {cautions.map(({ words: told, names: list }) => (
            <details key={told}>
              <summary>
                <span className="caution-text">!</span> {told}{" "}
                <span className="soft">{list.length}</span>
              </summary>
              <p>{list.join(", ")}</p>
            </details>
          ))}
        </section>
      )}
      <p className="soft">{limitWords(names)}</p>
    </section>
  );
}
