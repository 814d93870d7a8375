import { useMemo } from "react";
import type { Bed } from "../../core/model/plan.ts";
import { offPlot } from "./new-bed.ts";
import { useKept } from "../state/plan-actions.ts";
import * as texts from "./words.ts";

/** Says before they are made that beds would reach out of the plot. */
export function OffPlot({ beds }: { readonly beds: readonly Bed[] }) {
  const { plan } = useKept();
  const codes = useMemo(() => offPlot(plan, beds), [plan, beds]);
  return (
    <p role="status" className="caution-text" hidden={codes.length === 0}>
      {texts.bedsOffPlot(codes)}
    </p>
  );
}
