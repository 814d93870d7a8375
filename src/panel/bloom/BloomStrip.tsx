import { Suspense, lazy, useState } from "react";
import { useFirstPicture } from "../../store/window/first-picture.ts";
import { BloomSplitter } from "./BloomSplitter.tsx";
import { type BloomOrder, bloomOrders } from "./bloom-order.ts";
import { useChartHeight } from "./bloom-height.ts";
import { useViewState } from "../state/view-state.ts";
import { foldBloom } from "./commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { seasonCalendar } from "../season/commands.ts";
import { useShownResult } from "../state/use-shown-plan.ts";
import * as texts from "./command-words.ts";
import "./bloom.css";

/** What lies in the strip comes after the first picture of the window. */
export const fetchBloomBody = () => import("./BloomChart.tsx");

const LateBody = lazy(async () => ({ default: (await fetchBloomBody()).BloomBody }));

/** Who flowers when; where conflicting windows lie over each other; what is open on one day. */
export function BloomStrip() {
  const isOpen = useViewState((state) => state.isBloomOpen);
  const [order, setOrder] = useState<BloomOrder>("flower");
  const [isTesting, setTesting] = useState(false);
  return (
    <section className="region bloom" aria-labelledby="bloom-heading">
      {isOpen && <BloomSplitter />}
      <header className="region-head">
        <h2 id="bloom-heading" tabIndex={-1}>
          {texts.bloom}
        </h2>
        <p className="region-note">{texts.barKey}</p>
        <div className="bloom-actions">
          {isOpen && (
            <>
              <OrderChoice order={order} onPick={setOrder} />
              <button
                type="button"
                className="quiet"
                aria-expanded={isTesting}
                onClick={() => setTesting(!isTesting)}
              >
                {texts.lateSpring}
              </button>
            </>
          )}
          <CommandButton of={seasonCalendar} className="quiet">
            {texts.calendar}
          </CommandButton>
          <CommandButton of={foldBloom} className="quiet fold" aria-expanded={isOpen}>
            {isOpen ? texts.hide : texts.show}
          </CommandButton>
        </div>
      </header>
      {isOpen && <Body order={order} isTesting={isTesting} />}
    </section>
  );
}

interface BodyProps {
  readonly order: BloomOrder;
  readonly isTesting: boolean;
}

/** Its room is kept from the first moment: the sheet above is not moved when it comes. */
function Body(props: BodyProps) {
  const isPainted = useFirstPicture((state) => state.isPainted);
  const { stands } = useShownResult();
  const style = useChartHeight();
  const room = stands.some((stand) => stand.shedsPollen) ? (
    <div className="bloom-chart" style={style} />
  ) : (
    <p className="region-empty">{texts.nothingFlowersYet}</p>
  );
  return <Suspense fallback={room}>{isPainted ? <LateBody {...props} /> : room}</Suspense>;
}

interface OrderChoiceProps {
  readonly order: BloomOrder;
  readonly onPick: (order: BloomOrder) => void;
}

function OrderChoice({ order, onPick }: OrderChoiceProps) {
  return (
    <select
      className="bloom-order"
      aria-label={texts.orderOfTheRows}
      value={order}
      onChange={(event) => {
        const picked = bloomOrders.find((entry) => entry === event.target.value);
        if (picked) onPick(picked);
      }}
    >
      {bloomOrders.map((entry) => (
        <option key={entry} value={entry}>
          {texts.orderWords[entry]}
        </option>
      ))}
    </select>
  );
}
