import { Suspense, lazy, useCallback, useEffect, useRef, useState } from "react";
import { useCloseOutside } from "../form/popup.ts";
import { useViewState } from "../state/view-state.ts";
import * as texts from "./words.ts";
import "./find.css";

const FindList = lazy(async () => {
  const { FindList: Loaded } = await import("./FindList.tsx");
  return { default: Loaded };
});

/** Finds by variety, code, kind, name or note; the list of matches is loaded with the first letter. */
export function FindField() {
  const asked = useViewState((state) => state.findAsked);
  const field = useRef<HTMLInputElement>(null);
  const holder = useRef<HTMLDivElement>(null);
  const [query, setQuery] = useState("");
  const [isOpen, setOpen] = useState(false);
  const close = useCallback(() => setOpen(false), []);
  useEffect(() => {
    if (asked === 0) return;
    field.current?.focus();
    field.current?.select();
  }, [asked]);
  useCloseOutside(holder, isOpen, close);
  const hasQuery = isOpen && query.trim() !== "";
  return (
    <div ref={holder} className="find" role="search">
      <input
        ref={field}
        className="find-field"
        type="search"
        role="combobox"
        aria-label={texts.findHint}
        aria-expanded={hasQuery}
        aria-controls={hasQuery ? "find-list" : undefined}
        aria-autocomplete="list"
        autoComplete="off"
        spellCheck={false}
        placeholder={texts.find}
        data-draft={query === "" ? "none" : "typed"}
        value={query}
        onFocus={() => setOpen(true)}
        onChange={(event) => {
          setQuery(event.target.value);
          setOpen(true);
        }}
        onKeyDown={(event) => {
          if (event.key !== "Escape" || !isOpen) return;
          event.stopPropagation();
          setOpen(false);
        }}
      />
      {hasQuery && (
        <Suspense fallback={null}>
          <FindList query={query} field={field} />
        </Suspense>
      )}
    </div>
  );
}
