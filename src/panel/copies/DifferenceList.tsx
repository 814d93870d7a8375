import { useId } from "react";
import type { PlanDifference } from "../../core/record/merge-plans.ts";
import type { DifferingField } from "../../core/record/merge-sides.ts";
import { copiesWords as words, differenceName, fieldName } from "./copies-words.ts";

type SidesOf = (difference: PlanDifference) => readonly DifferingField[];

interface DifferenceListProps {
  readonly differences: readonly PlanDifference[];
  readonly sidesOf: SidesOf;
  readonly onTick: (difference: PlanDifference, isOn: boolean) => void;
}

/** Each difference of the two plans, side by side, to be ticked one by one. */
export function DifferenceList({ differences, sidesOf, onTick }: DifferenceListProps) {
  return (
    <ul className="plain-list differences" aria-label={words.changes}>
      {differences.map((difference) => (
        <DifferenceLine
          key={difference.id}
          difference={difference}
          sides={sidesOf(difference)}
          onTick={(isOn) => onTick(difference, isOn)}
        />
      ))}
    </ul>
  );
}

interface DifferenceLineProps {
  readonly difference: PlanDifference;
  readonly sides: readonly DifferingField[];
  readonly onTick: (isOn: boolean) => void;
}

function DifferenceLine({ difference, sides, onTick }: DifferenceLineProps) {
  const tableId = useId();
  return (
    <li>
      <label className="check-field">
        <input
          type="checkbox"
          checked={difference.isTaken}
          aria-describedby={sides.length > 0 ? tableId : undefined}
          onChange={(event) => onTick(event.target.checked)}
        />
        {tickText(difference)}
      </label>
      {sides.length > 0 && (
        <table id={tableId} className="sides">
          <thead>
            <tr>
              <th scope="col">{words.field}</th>
              <th scope="col">{words.here}</th>
              <th scope="col">{words.there}</th>
            </tr>
          </thead>
          <tbody>
            {sides.map(({ field, ours, theirs }) => (
              <tr key={field}>
                <th scope="row">{fieldName(field)}</th>
                <td>{ours === "" ? words.nothing : ours}</td>
                <td>{theirs === "" ? words.nothing : theirs}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </li>
  );
}

/** What ticking it does: `Take planting A03-1 as it is there`. */
function tickText(difference: PlanDifference): string {
  const name = differenceName(difference);
  if (difference.how === "added") return words.addNew(name);
  if (difference.how === "missing") return words.deleteMissing(name);
  return words.takeChanged(name);
}
