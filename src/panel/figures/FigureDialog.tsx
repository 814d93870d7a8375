import { useEffect, useId, useRef, useState } from "react";
import type { Variety } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { Dialog } from "../form/Dialog.tsx";
import { FigureKindList } from "./FigureKindList.tsx";
import { FigureKindPage } from "./FigureKindPage.tsx";
import { FigureRules } from "./FigureRules.tsx";
import * as texts from "./words.ts";
import "./figures.css";

interface FigureDialogProps {
  /** The kind to begin with; null: the list and the rule. */
  readonly kindId: string | null;
  /** Varieties a figure can be picked for, of any kind. */
  readonly varieties: readonly Variety[];
  readonly varietyId: string | null;
  readonly onPick: (variety: Variety, figure: string | undefined) => void;
  readonly onClose: () => void;
}

type Page = { readonly kind: "list" | "rules" } | { readonly kind: "kind"; readonly id: string };

/**
 * The figures behind the checks: on a wide screen the kinds beside one kind's page or the rule; on
 * a narrow one either the kinds or the page.
 */
export function FigureDialog(props: FigureDialogProps) {
  const { kindId, varieties, onPick, onClose } = props;
  const book = usePlanStore((state) => state.book);
  const [page, setPage] = useState<Page>(
    kindId === null ? { kind: "list" } : { kind: "kind", id: kindId },
  );
  const [varietyId, setVarietyId] = useState(props.varietyId);
  const kind = page.kind === "kind" ? book.kind(page.id) : undefined;
  const headingId = useId();
  const { headingRef, listRef } = useFocusOnTurn(page);
  return (
    <Dialog title={texts.figures} onClose={onClose} isWide>
      <div className="figures" data-page={page.kind === "list" ? "list" : "page"}>
        <nav className="figures-list" aria-label={texts.kinds} ref={listRef} tabIndex={-1}>
          <FigureKindList
            open={kind?.id ?? null}
            onOpen={(id) => setPage({ kind: "kind", id })}
            onRules={() => setPage({ kind: "rules" })}
          />
        </nav>
        <section className="figures-page" aria-labelledby={headingId} tabIndex={0}>
          <button
            type="button"
            className="link figures-back"
            onClick={() => setPage({ kind: "list" })}
          >
            {texts.allKinds}
          </button>
          <h3 id={headingId} ref={headingRef} tabIndex={-1}>
            {kind?.name ?? texts.howDistanceChosen}
          </h3>
          {kind ? (
            <FigureKindPage
              kind={kind}
              varieties={varieties.filter((variety) => variety.kind === kind.id)}
              varietyId={varietyId}
              onVariety={setVarietyId}
              onPick={onPick}
            />
          ) : (
            <FigureRules />
          )}
        </section>
      </div>
    </Dialog>
  );
}

/** Turning to another page begins at its heading, for the eye and for the keyboard. */
function useFocusOnTurn(page: Page) {
  const headingRef = useRef<HTMLHeadingElement>(null);
  const listRef = useRef<HTMLElement>(null);
  const first = useRef(page);
  useEffect(() => {
    if (page === first.current) return;
    if (page.kind === "list") {
      listRef.current?.focus();
      return;
    }
    headingRef.current?.focus();
    headingRef.current?.parentElement?.scrollTo({ top: 0 });
  }, [page]);
  return { headingRef, listRef };
}
