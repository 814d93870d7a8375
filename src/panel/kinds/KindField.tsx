import { useId, useState } from "react";
import type { Kind } from "../../core/kinds/crop.ts";
import { LIMITS } from "../../core/model/limits.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { findKinds, formSearched } from "./kind-search.ts";
import * as texts from "./words.ts";

interface KindFieldProps {
  readonly kindId: string | undefined;
  /** The form is the one that was searched for, such as a potato-leaf tomato. */
  readonly onPick: (kindId: string, form?: string) => void;
  /** Adds a kind that is not known here, by the name searched for; absent: not offered. */
  readonly onAdd?: (name: string) => void;
}

/** Kinds shown of a search; more would not be read. */
const MOST_SHOWN = 8;

/** A kind picked by searching its common, other or botanical name. */
export function KindField({ kindId, onPick, onAdd }: KindFieldProps) {
  const book = usePlanStore((state) => state.book);
  const [search, setSearch] = useState("");
  const [isOpen, setOpen] = useState(kindId === undefined);
  const id = useId();
  const kind = kindId === undefined ? undefined : book.kind(kindId);
  if (!isOpen) return <PickedKind kind={kind} id={kindId ?? ""} onChange={() => setOpen(true)} />;
  const found = findKinds(book.kinds, search).slice(0, MOST_SHOWN);
  // Kinds of several species: which is the grower's to say.
  const isShared = book.find(search) === undefined && book.sharing(search).length > 0;
  return (
    <fieldset className="kind-search">
      <legend>{texts.kindField}</legend>
      <label htmlFor={id}>{texts.searchCommonBotanicalName}</label>
      <input
        id={id}
        type="search"
        autoComplete="off"
        spellCheck={false}
        className="wide"
        value={search}
        onChange={(event) => setSearch(event.target.value)}
        onKeyDown={(event) => {
          // Enter takes the first found; it would send the form off with no kind picked.
          if (event.key !== "Enter") return;
          event.preventDefault();
          const [first] = found;
          if (first && !isShared) onPick(first.id, formSearched(first, search)?.id);
        }}
      />
      {found.length === 0 && (
        <p role="status" className="soft">
          {search.trim() === ""
            ? texts.kindsKnownTypeFew(book.kinds.length)
            : texts.noKindNameKnown}
        </p>
      )}
      {isShared && (
        <p role="status" className="soft">
          {texts.severalSpecies(search.trim())}
        </p>
      )}
      <FoundKinds found={found} search={search} kindId={kindId} group={id} onPick={onPick} />
      {onAdd && search.trim() !== "" && !isNamed(found, search) && (
        <button
          type="button"
          className="act"
          onClick={() => onAdd(search.trim().slice(0, LIMITS.name))}
        >
          {texts.addKindYourOwn(search.trim())}
        </button>
      )}
    </fieldset>
  );
}

/** Whether a kind bears the very name that was typed: nobody wants another of it. */
function isNamed(found: readonly Kind[], search: string): boolean {
  return found.some(({ name }) => name.toLowerCase() === search.trim().toLowerCase());
}

interface PickedKindProps {
  readonly kind: Kind | undefined;
  readonly id: string;
  readonly onChange: () => void;
}

/** The kind there is, until another is searched for. */
function PickedKind({ kind, id, onChange }: PickedKindProps) {
  return (
    <div className="field">
      <span className="field-name">{texts.kindField}</span>
      <span className="field-value">
        <KindName kind={kind} id={id} />{" "}
        <button type="button" className="act" aria-label={texts.changeKind} onClick={onChange}>
          {texts.change}
        </button>
      </span>
    </div>
  );
}

interface FoundKindsProps extends Pick<KindFieldProps, "kindId" | "onPick"> {
  readonly found: readonly Kind[];
  readonly search: string;
  /** Tells the buttons of this field from those of others. */
  readonly group: string;
}

function FoundKinds({ found, search, kindId, group, onPick }: FoundKindsProps) {
  if (found.length === 0) return null;
  return (
    <ul className="plain-list kind-list">
      {found.map((entry) => (
        <li key={entry.id}>
          <label>
            <input
              type="radio"
              name={texts.kindGroup(group)}
              checked={entry.id === kindId}
              onChange={() => onPick(entry.id, formSearched(entry, search)?.id)}
            />
            <KindName kind={entry} id={entry.id} form={formSearched(entry, search)?.name} />
          </label>
        </li>
      ))}
    </ul>
  );
}

interface KindNameProps {
  readonly kind: Kind | undefined;
  readonly id: string;
  readonly form?: string | undefined;
}

function KindName({ kind, id, form }: KindNameProps) {
  if (!kind) return <span>{id}</span>;
  return (
    <span>
      {kind.name}{" "}
      <i lang="la" className="soft">
        {kind.botanicalName}
      </i>
      {form !== undefined && <span className="soft">, {form}</span>}
    </span>
  );
}
