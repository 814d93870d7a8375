import { useState } from "react";
import { BloomSplitter } from "./BloomSplitter.tsx";
import { BloomChart } from "./BloomChart.tsx";
import { LateSpringTrial } from "./LateSpringTrial.tsx";
import { type BloomOrder, bloomOrders } from "./bloom-order.ts";
import { orderWords } from "./bloom-words.ts";
import { useViewState } from "../state/view-state.ts";
import { foldBloom } from "./commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { seasonCalendar } from "../season/commands.ts";
import * as texts from "./words.ts";
import "./bloom.css";

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
      {isOpen && isTesting && <LateSpringTrial />}
      {isOpen && <BloomChart order={order} />}
    </section>
  );
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
          {orderWords[entry]}
        </option>
      ))}
    </select>
  );
}
