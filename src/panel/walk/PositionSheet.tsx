import { nearestStops } from "../../core/fieldwork/walk-stops.ts";
import { usePosition } from "../../store/window/position.ts";
import { viewNow } from "../state/view-state.ts";
import { windowNow } from "../state/plan-actions.ts";
import { useWalkPlace } from "../state/walk-place.ts";
import { faultWords, positionWords as words } from "./position-words.ts";
import { askPosition } from "./show-place.ts";
import { usePlaceOnSheet } from "./use-place.ts";
import type { WalkNow } from "./use-walk.ts";
import { walkWords } from "./walk-words.ts";

interface PositionSheetProps {
  readonly walk: WalkNow;
  readonly onClose: () => void;
}

/** Plots offered: who stands between two beds chooses. */
const OFFERED = 4;
/** Nearer than this nobody steps beside it, metres. */
const INSIDE_M = 0.5;
/** Farther than this from everything the site's position is more likely wrong than the walk so long, metres. */
const FAR_M = 5000;

/** Where the walker stands, and the plots nearest to it. */
export function PositionSheet({ walk, onClose }: PositionSheetProps) {
  const { plan } = walk.planned;
  const place = usePlaceOnSheet(plan.site);
  const goTo = useWalkPlace((state) => state.goTo);
  const near = place ? nearestStops(walk.stops, place.at).slice(0, OFFERED) : [];
  const [first] = near;
  return (
    <div className="walk-ask" role="group" aria-label={words.heading}>
      <h3>{words.heading}</h3>
      <PositionStatus walk={walk} />
      {first && first.distanceM > FAR_M && <p className="caution-text">{words.far}</p>}
      {near.map(({ stop, distanceM }) => (
        <button
          key={stop.id}
          type="button"
          className="walk-near"
          onClick={() => {
            goTo(stop.id);
            onClose();
          }}
        >
          <span className="code">{stop.code}</span>
          <span>{distanceM < INSIDE_M ? words.atPlot : words.away(distanceM, plan.units)}</span>
        </button>
      ))}
      <div className="walk-pair">
        <button type="button" onClick={onClose}>
          {walkWords.close}
        </button>
        <button
          type="button"
          disabled={!place}
          onClick={() => {
            viewNow().showSheet();
            windowNow().bringIntoView(first ? [first.stop.id] : "all");
          }}
        >
          {words.showSheet}
        </button>
      </div>
    </div>
  );
}

/** Asks the phone, says what it answers, and why it does not. */
export function PositionStatus({ walk }: { readonly walk: WalkNow }) {
  const { isOn, fix, fault, stop } = usePosition();
  const { site, units } = walk.planned.plan;
  if (!site.position) return <p>{words.noSite}</p>;
  if (!isOn) {
    return (
      <>
        <button type="button" className="primary" onClick={askPosition}>
          {words.ask}
        </button>
        <p>{words.promise}</p>
      </>
    );
  }
  return (
    <>
      <p role="status">
        {fault ? faultWords[fault] : fix ? words.within(fix.accuracyM, units) : words.waiting}
      </p>
      <button type="button" onClick={stop}>
        {words.stop}
      </button>
    </>
  );
}
