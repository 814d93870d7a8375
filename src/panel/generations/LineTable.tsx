import type { LineLot } from "../../core/generations/line-lot.ts";
import type { PlannedGrowing } from "../../core/generations/planned-growing.ts";
import { percentText } from "../../core/generations/loss-words.ts";
import { listed } from "../../core/checks/wording.ts";
import { cameWords, isolationSign, isolationWords, pollenWords, sizeText } from "./line-words.ts";

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
        <caption>Step by step, with what was counted</caption>
        <thead>
          <tr>
            <th scope="col">Year</th>
            <th scope="col">Lot</th>
            <th scope="col">Grown from</th>
            <th scope="col">Plot</th>
            <th scope="col">Seed plants</th>
            <th scope="col">Pollen plants</th>
            <th scope="col">Effective</th>
            <th scope="col">Lost so far</th>
            <th scope="col">Isolation</th>
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
              <td>this season</td>
              <td>planned</td>
              <td>
                {parents.length === 0 ? "no lot named" : listed(parents.map(({ lot }) => lot.code))}
              </td>
              <td>{listed(plantings.map(({ code }) => code))}</td>
              <td>{plants ?? "not counted"}</td>
              <td>{plants ?? "not counted"}</td>
              <td>{sizeText(size)}</td>
              <td>{lostAfter === null ? "not known" : percentText(lostAfter)}</td>
              <td>to come</td>
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
      <td>{year ?? "not known"}</td>
      <td>
        <button type="button" className="link code" onClick={() => onPick(lot.id)}>
          {lot.code}
        </button>
      </td>
      <td>
        {from}
        {isReadFromPlan && " (by this plan's plot)"}
        {line.how !== "grown" && parents.length > 0 && `, ${cameWords(line)}`}
      </td>
      <td>{growing?.plot ?? ""}</td>
      <td>
        {growing ? (growing.seedPlants ?? "not counted") : ""}
        {growing?.isEqualSeed === true && ", equal seed"}
      </td>
      <td>{growing ? pollenWords(growing, line.kind) : ""}</td>
      <td>{growing ? sizeText(growing.size) : ""}</td>
      <td>
        {past.generations > 0 && percentText(past.lost)}
        {past.hasUnknown && " and more"}
      </td>
      <td>
        {growing ? `${isolationSign[isolation]} ${isolationWords[isolation]}` : ""}
        {past.hasCrossing && isolation !== "not met" && " ✕ after a crossing"}
      </td>
    </tr>
  );
}
