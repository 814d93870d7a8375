import { usePosition } from "../../store/window/position.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { positionWords as words } from "./position-words.ts";
import "./place.css";

/** On the sheet, while the position is asked for: how sure it is, and a way to stop. */
export function PlaceLine() {
  const { fix, stop } = usePosition();
  const { units } = useShownPlan();
  return (
    <div className="place-line">
      <span>{fix ? words.within(fix.accuracyM, units) : words.waiting}</span>
      <button type="button" onClick={stop}>
        {words.stop}
      </button>
    </div>
  );
}
