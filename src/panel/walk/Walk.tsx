import { type RefObject, useRef, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { windowNow } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";
import { useWalkPlace } from "../state/walk-place.ts";
import { EntryAsk } from "./EntryAsk.tsx";
import { EntryButtons } from "./EntryButtons.tsx";
import { News } from "./News.tsx";
import { PositionSheet } from "./PositionSheet.tsx";
import { SourceSheet } from "./SourceSheet.tsx";
import { StopCard } from "./StopCard.tsx";
import { useNews } from "./use-news.ts";
import { type WalkNow, useWalk } from "./use-walk.ts";
import { WalkBar } from "./WalkBar.tsx";
import { WalkDay } from "./WalkDay.tsx";
import { PlotList, WalkMore } from "./WalkMore.tsx";
import type { WalkSheet } from "./walk-sheet.ts";
import { WeekJobs } from "./WeekJobs.tsx";
import { walkWords as words } from "./walk-words.ts";
import "./walk.css";

/** From plot to plot with a phone in one hand: what stands here, what is due, what happened. */
export function Walk() {
  const openings = usePlanStore((state) => state.openings);
  // Another plan is another walk.
  return <WalkOfPlan key={openings} />;
}

function WalkOfPlan() {
  const title = usePlanStore(({ plan }) => plan.title);
  const walk = useWalk();
  const news = useNews(walk);
  const { stop, stops, index } = walk;
  const [sheet, setSheet] = useState<WalkSheet>(null);
  const goTo = useWalkPlace((state) => state.goTo);
  const holdsRef = useRef<string | null>(null);
  /** What is typed and not added yet is never dropped by going on. */
  const unlessHeld = (go: () => void) => {
    if (holdsRef.current === null) go();
    else windowNow().announce(holdsRef.current);
  };
  const step = (by: number) => {
    const next = stops[index + by];
    if (!next) return;
    setSheet(null);
    goTo(next.id);
  };
  return (
    <section className="walk" aria-labelledby="walk-heading">
      <header className="walk-head">
        <h1 className="visually-hidden">{title}</h1>
        <h2 id="walk-heading" className="visually-hidden">
          {words.heading}
        </h2>
        <button
          type="button"
          onClick={() => unlessHeld(viewNow().showSheet)}
          aria-label={words.leave}
        >
          <span aria-hidden="true">✕</span>
        </button>
        <p className="walk-place">{stop && words.place(index + 1, stops.length)}</p>
        <WalkDay walk={walk} />
      </header>
      {/* Another plot is read from its top. */}
      <div className="walk-card" key={stop?.id}>
        <LookOnly />
        {stop && <News news={news} walk={walk} />}
        {stop ? <StopCard walk={walk} stop={stop} onAsk={setSheet} /> : <p>{words.none}</p>}
      </div>
      <div className="walk-hand">
        <Said />
        <HandPart walk={walk} sheet={sheet} holdsRef={holdsRef} onSheet={setSheet} />
        <WalkBar
          hasPrevious={index > 0}
          hasNext={index < stops.length - 1}
          isMore={sheet === "more"}
          onStep={(by) => unlessHeld(() => step(by))}
          onMore={() => unlessHeld(() => setSheet(sheet === "more" ? null : "more"))}
        />
      </div>
    </section>
  );
}

interface HandPartProps {
  readonly walk: WalkNow;
  readonly sheet: WalkSheet;
  readonly holdsRef: RefObject<string | null>;
  readonly onSheet: (sheet: WalkSheet) => void;
}

function HandPart({ walk, sheet, holdsRef, onSheet }: HandPartProps) {
  const { stop } = walk;
  const close = () => onSheet(null);
  if (sheet === "more") return <WalkMore walk={walk} onSheet={onSheet} />;
  if (sheet === "plots") return <PlotList walk={walk} onSheet={onSheet} />;
  if (sheet === "jobs") return <WeekJobs walk={walk} onSheet={onSheet} />;
  if (sheet === "position") return <PositionSheet walk={walk} onClose={close} />;
  if (sheet === "source") return <SourceSheet walk={walk} onClose={close} />;
  if (!stop) return null;
  if (sheet !== null) {
    return (
      <EntryAsk
        key={`${stop.id} ${sheet.asks}`}
        stop={stop}
        what={sheet.asks}
        on={walk.on}
        holdsRef={holdsRef}
        onClose={close}
      />
    );
  }
  return <EntryButtons walk={walk} stop={stop} isAll={false} onSheet={onSheet} />;
}

function LookOnly() {
  const lookOnly = usePlanStore((state) => state.lookOnly);
  return lookOnly === null ? null : <p className="walk-warning">{words.lookOnly}</p>;
}

/** The words that screen readers are told, for the eye; what was said before the walk is over. */
function Said() {
  const said = useWindowStore((state) => state.announcement);
  const [before] = useState(said);
  return (
    <p className="walk-said" aria-hidden="true">
      {said === before ? "" : said}
    </p>
  );
}
