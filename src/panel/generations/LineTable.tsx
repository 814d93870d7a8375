import type { LineLot } from "../../core/generations/line-lot.ts";
import type { PlannedGrowing } from "../../core/generations/planned-growing.ts";
import { percentText } from "../../core/generations/loss-words.ts";
import { listed } from "../../core/checks/wording.ts";
import { cameWords, isolationSign, isolationWords, pollenWords, sizeText } from "./line-words.ts";
import * as texts from "./words.ts";

interface LineTableProps {
  readonly lots: readonly LineLot[];
  readonly planned: readonly PlannedGrowing[];
  readonly pickedId: string | null;
  readonly onPick: (lotId: string) => void;
}

/** The line step by step, with every number that is reckoned with. */
export function LineTable({ lots, planned, pickedId, onPick }: LineTableProps) {
  return (
    <div className="line-scroll">
      <table className="line-table">
        <caption>{texts.stepStepCounted}</caption>
        <thead>
          <tr>
            <th scope="col">{texts.yearColumn}</th>
            <th scope="col">{texts.lot}</th>
            <th scope="col">{texts.grownFrom}</th>
            <th scope="col">{texts.plot}</th>
            <th scope="col">{texts.seedPlants}</th>
            <th scope="col">{texts.pollenPlants}</th>
            <th scope="col">{texts.effective}</th>
            <th scope="col">{texts.lostSoFar}</th>
            <th scope="col">{texts.isolation}</th>
          </tr>
        </thead>
        <tbody>
          {lots.map((line) => (
            <LotRow
              key={line.lot.id}
              line={line}
              isPicked={line.lot.id === pickedId}
              onPick={onPick}
            />
          ))}
          {planned.map(({ plantings, parents, plants, size, lostAfter }) => (
            <tr key={plantings[0]?.id}>
              <td>{texts.thisSeason2}</td>
              <td>{texts.planned}</td>
              <td>
                {parents.length === 0
                  ? texts.noLotNamed
                  : listed(parents.map(({ lot }) => lot.code))}
              </td>
              <td>{listed(plantings.map(({ code }) => code))}</td>
              <td>{plants ?? texts.notCounted}</td>
              <td>{plants ?? texts.notCounted}</td>
              <td>{sizeText(size)}</td>
              <td>{lostAfter === null ? texts.notKnown : percentText(lostAfter)}</td>
              <td>{texts.toCome}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface LotRowProps {
  readonly line: LineLot;
  readonly isPicked: boolean;
  readonly onPick: (lotId: string) => void;
}

function LotRow({ line, isPicked, onPick }: LotRowProps) {
  const { lot, year, parents, growing, isolation, past, isReadFromPlan } = line;
  const from =
    parents.length === 0 ? cameWords(line) : listed(parents.map((each) => each.lot.code));
  return (
    <tr aria-current={isPicked ? "true" : undefined}>
      <td>{year ?? texts.notKnown}</td>
      <td>
        <button type="button" className="link code" onClick={() => onPick(lot.id)}>
          {lot.code}
        </button>
      </td>
      <td>
        {from}
        {isReadFromPlan && texts.byThisPlansPlot}
        {line.how !== "grown" && parents.length > 0 && `, ${cameWords(line)}`}
      </td>
      <td>{growing?.plot ?? ""}</td>
      <td>
        {growing ? (growing.seedPlants ?? texts.notCounted) : ""}
        {growing?.isEqualSeed === true && texts.equalSeed}
      </td>
      <td>{growing ? pollenWords(growing, line.kind) : ""}</td>
      <td>{growing ? sizeText(growing.size) : ""}</td>
      <td>
        {past.generations > 0 && percentText(past.lost)}
        {past.hasUnknown && texts.andMore}
      </td>
      <td>
        {growing ? `${isolationSign[isolation]} ${isolationWords[isolation]}` : ""}
        {past.hasCrossing && isolation !== "not met" && texts.afterACrossing}
      </td>
    </tr>
  );
}
