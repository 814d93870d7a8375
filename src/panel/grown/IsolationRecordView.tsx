import type { LengthUnit } from "../../core/model/length.ts";
import type { IsolationRecord } from "../../core/model/plan.ts";
import {
  isolationSentences,
  isolationSourceCells,
  isolationSourceTitles,
} from "../../core/record/isolation-record-words.ts";
import { harvestWords as words } from "./harvest-words.ts";
import "./grown.css";

interface IsolationRecordViewProps {
  readonly record: IsolationRecord;
  readonly unit: LengthUnit;
}

/** How a lot was isolated, as it was frozen at harvest. */
export function IsolationRecordView({ record, unit }: IsolationRecordViewProps) {
  const { sources, notObserved, moreSources = 0 } = record;
  return (
    <>
      <ul className="plain-list">
        {isolationSentences(record, unit).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {sources.length === 0 ? (
        <p>{words.noSources}</p>
      ) : (
        <table className="isolation-sources">
          <caption>{words.sources}</caption>
          <thead>
            <tr>
              {isolationSourceTitles.map((title) => (
                <th key={title} scope="col">
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sources.map((source) => (
              <SourceRow key={source.id} cells={isolationSourceCells(source, unit)} />
            ))}
          </tbody>
        </table>
      )}
      {moreSources > 0 && <p>{words.more(moreSources)}</p>}
      {notObserved.length > 0 && (
        <details>
          <summary>
            {words.notObserved}: {notObserved.length}
          </summary>
          <ul>
            {notObserved.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function SourceRow({ cells: [name, ...cells] }: { readonly cells: readonly string[] }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      {cells.map((cell, index) => (
        <td key={isolationSourceTitles[index + 1]}>{cell}</td>
      ))}
    </tr>
  );
}
