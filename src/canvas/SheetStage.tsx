import { Stage } from "konva/lib/Stage.js";
import { type ReactNode, createContext, useCallback, useContext, useEffect, useState } from "react";
import { useView } from "./view-store.ts";

const StageContext = createContext<Stage | null>(null);

const STYLE = { pointerEvents: "none" } as const;

/**
 * The stage of the sheet and room for its layers. Made by hand: a second React renderer for three
 * layers of one shape each would be a tenth of the first load.
 */
export function SheetStage({ children }: { readonly children: ReactNode }) {
  const [stage, setStage] = useState<Stage | null>(null);
  const width = useView((state) => state.widthPx);
  const height = useView((state) => state.heightPx);
  const hold = useCallback((container: HTMLDivElement) => {
    const made = new Stage({ container, listening: false });
    setStage(made);
    return () => {
      made.destroy();
    };
  }, []);
  useEffect(() => {
    stage?.size({ width, height });
  }, [stage, width, height]);
  return (
    <div ref={hold} style={STYLE}>
      <StageContext value={stage}>{children}</StageContext>
    </div>
  );
}

/** Null until the stage is there. */
export function useStage(): Stage | null {
  return useContext(StageContext);
}
