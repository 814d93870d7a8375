import { type Finding, describeFinding } from "../../core/checks/all-checks.ts";
import { wordingOf } from "../../core/checks/checked-layout.ts";
import { severitySign, severityWord } from "../../core/checks/wording.ts";
import type { WalkNow } from "./use-walk.ts";
import { walkWords as words } from "./walk-words.ts";

interface NewsProps {
  readonly news: readonly Finding[];
  readonly walk: WalkNow;
}

/** What was just written down may change what is clear: it is told before one goes on. */
export function News({ news, walk: { grown, stop } }: NewsProps) {
  const isHere = ({ subjects }: Finding) => stop !== null && subjects.includes(stop.id);
  const here = news.filter(isHere);
  const elsewhere = news.length - here.length;
  return (
    <div role="status">
      {here.length > 0 && (
        <div className="walk-news">
          <p>{words.news}</p>
          {here.map((finding) => (
            <p key={finding.id}>
              <span aria-hidden="true">{severitySign[finding.severity]}</span>{" "}
              {severityWord[finding.severity]}: {describeFinding(finding, wordingOf(grown)).title}
            </p>
          ))}
        </div>
      )}
      {elsewhere > 0 && <p>{words.newsElsewhere(elsewhere)}</p>}
    </div>
  );
}
