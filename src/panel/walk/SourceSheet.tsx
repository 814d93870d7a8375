import { useMemo, useState } from "react";
import { shapeCentre } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { freeLabel } from "../../core/edits/ground.ts";
import { describeStanding } from "../../core/checks/pair-words.ts";
import { capital } from "../../core/checks/wording.ts";
import { wordingOf } from "../../core/checks/checked-layout.ts";
import { shortDate } from "../../core/model/day.ts";
import {
  type FoundSource,
  endangeredBy,
  placeFoundSource,
  placeTowards,
} from "../../core/record/found-source.ts";
import { usePosition } from "../../store/window/position.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { KindField } from "../kinds/KindField.tsx";
import { signature } from "../record/write-down.ts";
import { commit } from "../state/plan-actions.ts";
import { useWalkPlace } from "../state/walk-place.ts";
import { PositionStatus } from "./PositionSheet.tsx";
import { directions, positionWords as words } from "./position-words.ts";
import { usePlaceOnSheet } from "./use-place.ts";
import type { WalkNow } from "./use-walk.ts";
import { walkWords } from "./walk-words.ts";

interface SourceSheetProps {
  readonly walk: WalkNow;
  readonly onClose: () => void;
}

interface Spot {
  /** `here`, or id of the plot it is measured from. */
  readonly from: string;
  readonly distanceM: number;
  readonly bearing: string;
}

/** A plant in flower that the plan does not know: kind first, then its place; what it endangers is told at once. */
export function SourceSheet({ walk, onClose }: SourceSheetProps) {
  const [kind, setKind] = useState<string | null>(null);
  return (
    <div className="walk-ask" role="group" aria-label={words.foundHeading}>
      <h3>{words.foundHeading}</h3>
      {kind === null ? (
        <KindChoice walk={walk} onPick={setKind} />
      ) : (
        <PlaceAndTell walk={walk} kind={kind} onClose={onClose} onKind={() => setKind(null)} />
      )}
      {kind === null && (
        <button type="button" onClick={onClose}>
          {walkWords.cancel}
        </button>
      )}
    </div>
  );
}

interface KindChoiceProps {
  readonly walk: WalkNow;
  readonly onPick: (kind: string) => void;
}

/** The kinds of this plan first: they are what it could cross with. */
function KindChoice({ walk, onPick }: KindChoiceProps) {
  const { plan, book } = walk.planned;
  const [isOther, setOther] = useState(false);
  const known = useMemo(() => {
    const ids = [
      ...plan.varieties.map((variety) => variety.kind),
      ...plan.surroundings.flatMap((each) => each.kind ?? []),
    ];
    return [...new Set(ids)].flatMap((id) => book.kind(id) ?? []);
  }, [plan.varieties, plan.surroundings, book]);
  return (
    <>
      <p>{words.whatKind}</p>
      <div className="walk-chips">
        {known.map(({ id, name }) => (
          <button key={id} type="button" onClick={() => onPick(id)}>
            {capital(name)}
          </button>
        ))}
        <button type="button" aria-expanded={isOther} onClick={() => setOther(!isOther)}>
          {words.otherKind}
        </button>
      </div>
      {isOther && <KindField kindId={undefined} onPick={onPick} />}
    </>
  );
}

interface PlaceAndTellProps extends SourceSheetProps {
  readonly kind: string;
  readonly onKind: () => void;
}

function PlaceAndTell({ walk, kind, onClose, onKind }: PlaceAndTellProps) {
  const { plan, book } = walk.planned;
  const isOn = usePosition((state) => state.isOn);
  const place = usePlaceOnSheet(plan.site);
  const [id] = useState(() => `source-${signature().id}`);
  const [spot, setSpot] = useState<Spot>({
    from: isOn ? "here" : (walk.stop?.id ?? "here"),
    distanceM: 0,
    bearing: "0",
  });
  const set = (change: Partial<Spot>) => {
    setSpot((before) => ({ ...before, ...change }));
    return null;
  };
  const name = book.kind(kind)?.name ?? kind;
  const at = spotOf(spot, walk, place?.at ?? null);
  const goTo = useWalkPlace((state) => state.goTo);
  const found: FoundSource | null = at && {
    id,
    label: freeLabel(plan, words.foundLabel(capital(name), shortDate(walk.on))),
    kind,
    at,
    unsureM: spot.from === "here" ? (place?.accuracyM ?? 0) : 0,
    on: walk.on,
  };
  return (
    <>
      <button type="button" onClick={onKind}>
        {capital(name)}
      </button>
      <SpotFields walk={walk} spot={spot} onSet={set} />
      {found ? <Danger walk={walk} found={found} /> : <p>{words.needsPlace}</p>}
      <div className="walk-pair">
        <button type="button" onClick={onClose}>
          {walkWords.cancel}
        </button>
        <button
          type="button"
          className="primary"
          disabled={!found}
          onClick={() => {
            if (!found) return;
            commit(placeFoundSource(found, signature()));
            goTo(found.id);
            onClose();
          }}
        >
          {words.put}
        </button>
      </div>
    </>
  );
}

function spotOf(spot: Spot, walk: WalkNow, here: Point | null): Point | null {
  const stop = walk.stops.find(({ id }) => id === spot.from);
  const from = stop ? shapeCentre(stop.outline) : here;
  if (!from) return null;
  const { upBearingDeg } = walk.planned.plan.site;
  return placeTowards(from, spot.distanceM, Number(spot.bearing), upBearingDeg);
}

interface SpotFieldsProps {
  readonly walk: WalkNow;
  readonly spot: Spot;
  readonly onSet: (change: Partial<Spot>) => null;
}

function SpotFields({ walk, spot, onSet }: SpotFieldsProps) {
  const choices = [
    { value: "here", label: words.here },
    ...walk.stops.map(({ id, code }) => ({ value: id, label: code })),
  ];
  const isHere = spot.from === "here";
  return (
    <div className="walk-spot">
      <ChoiceField
        label={isHere ? words.place : words.fromPlot}
        value={spot.from}
        choices={choices}
        onPick={(from) => void onSet({ from })}
      />
      {isHere && <PositionStatus walk={walk} />}
      <LengthField
        label={isHere ? words.correct : words.distance}
        value={spot.distanceM}
        onApply={(distanceM) => onSet({ distanceM })}
      />
      <ChoiceField
        label={words.direction}
        value={spot.bearing}
        choices={directions}
        onPick={(bearing) => void onSet({ bearing })}
      />
    </div>
  );
}

/** Told before it is kept: what of ours it may cross with, the nearest first. */
function Danger({ walk, found }: { readonly walk: WalkNow; readonly found: FoundSource }) {
  const { grown } = walk;
  const { pairs, checked } = endangeredBy(grown, found);
  const wording = wordingOf(checked);
  return (
    <div role="status">
      <h4>{words.danger}</h4>
      {pairs.length === 0 && <p>{words.nothing}</p>}
      <ul className="plain-list">
        {pairs.map((pair) => (
          <li
            key={pair.seedParent}
            className={pair.standing === "conflict" ? "conflict-text" : "caution-text"}
          >
            {wording.nameOf(pair.seedParent)}: {describeStanding(pair, wording)}
          </li>
        ))}
      </ul>
    </div>
  );
}
