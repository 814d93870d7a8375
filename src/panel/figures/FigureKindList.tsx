import { useId, useState } from "react";
import type { Kind } from "../../core/kinds/crop.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { findKinds } from "../kinds/kind-search.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

interface FigureKindListProps {
  /** Id of the kind that is open; null: none. */
  readonly open: string | null;
  readonly onOpen: (kindId: string) => void;
  readonly onRules: () => void;
}

/** All kinds by family, or those whose names hold what is typed. */
export function FigureKindList({ open, onOpen, onRules }: FigureKindListProps) {
  const book = usePlanStore((state) => state.book);
  const [search, setSearch] = useState("");
  const id = useId();
  const isSearching = search.trim() !== "";
  const found = isSearching ? findKinds(book.kinds, search) : [];
  return (
    <>
      <p>
        <label htmlFor={id}>{texts.findKind}</label>
        <input
          id={id}
          type="search"
          autoComplete="off"
          spellCheck={false}
          value={search}
          onChange={(event) => setSearch(event.target.value)}
        />
      </p>
      <button type="button" className="link" onClick={onRules}>
        {texts.howDistanceChosen}
      </button>
      {isSearching ? (
        <>
          <p role="status" className="soft">
            {found.length === 0 ? texts.noSuchKind : countWords(found.length)}
          </p>
          <KindButtons kinds={found} open={open} onOpen={onOpen} />
        </>
      ) : (
        families(book.kinds).map(([family, members]) => (
          <section key={family}>
            <h3>{family === "" ? texts.ownKinds : family}</h3>
            <KindButtons kinds={members} open={open} onOpen={onOpen} />
          </section>
        ))
      )}
    </>
  );
}

function countWords(count: number): string {
  return texts.kindCount(count);
}

/** Kinds by family, in the order of the book. */
function families(kinds: readonly Kind[]): readonly (readonly [string, readonly Kind[]])[] {
  const byFamily = new Map<string, Kind[]>();
  for (const kind of kinds) {
    const members = byFamily.get(kind.family);
    if (members) members.push(kind);
    else byFamily.set(kind.family, [kind]);
  }
  return [...byFamily];
}

interface KindButtonsProps {
  readonly kinds: readonly Kind[];
  readonly open: string | null;
  readonly onOpen: (kindId: string) => void;
}

function KindButtons({ kinds, open, onOpen }: KindButtonsProps) {
  const { ownKinds } = useShownPlan();
  const own = new Set(ownKinds.map((kind) => kind.id));
  return (
    <ul className="plain-list figure-kinds">
      {kinds.map(({ id, name, botanicalName }) => (
        <li key={id}>
          <button
            type="button"
            className="quiet"
            aria-current={id === open ? "true" : undefined}
            onClick={() => onOpen(id)}
          >
            {name} {botanicalName !== name && <i lang="la">{botanicalName}</i>}
            {own.has(id) && <span className="soft"> {texts.ownKind}</span>}
          </button>
        </li>
      ))}
    </ul>
  );
}
