/** Cut, copy and paste through the system's clipboard; a text area where the browser refuses it. */
import {
  clipText,
  pasteClashes,
  pasteObjects,
  pasteShift,
  readClip,
} from "../../core/edits/clipboard.ts";
import type { ClashAnswer, KindClash } from "../../core/edits/kinds-brought.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { newIds } from "../state/chosen-objects.ts";
import { commit, planNow, windowNow } from "../state/plan-actions.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { removeNow } from "../commands/remove-objects.ts";
import { copiedTextDialog, pasteDialog, pasteKindsDialog } from "./commands.ts";
import * as words from "./words.ts";

/** The selection as text for the clipboard, and what to call it; null when nothing is selected. */
function copiedNow() {
  const { plan, layoutId } = planNow();
  const { selection } = windowNow();
  const layout = layoutOf(plan, layoutId);
  const text = clipText(plan, layout, selection);
  return text === null ? null : { text, names: objectNames(plan, layout, selection) };
}

/** Fills the data of a browser's copy or cut event; whether there was anything to copy. */
export function copyInto(data: DataTransfer, isCut: boolean): boolean {
  const copied = copiedNow();
  if (!copied) return false;
  data.setData("text/plain", copied.text);
  afterCopy(copied.names, isCut);
  return true;
}

function afterCopy(names: string, isCut: boolean): void {
  const { selection, announce } = windowNow();
  if (isCut) removeNow(selection, words.cutObjects);
  else announce(words.copiedObjects(names));
}

async function writeSelection(isCut: boolean): Promise<void> {
  const copied = copiedNow();
  if (!copied) return;
  try {
    await navigator.clipboard.writeText(copied.text);
  } catch {
    copiedTextDialog.open({ text: copied.text });
    return;
  }
  afterCopy(copied.names, isCut);
}

export function copySelection(): Promise<void> {
  return writeSelection(false);
}

export function cutSelection(): Promise<void> {
  return writeSelection(true);
}

export async function pasteFromClipboard(): Promise<void> {
  let text: string;
  try {
    text = await navigator.clipboard.readText();
  } catch {
    const reason = words.clipboardRefused;
    pasteDialog.open({ reason });
    return;
  }
  const reason = pasteText(text);
  if (reason !== null) pasteDialog.open({ reason });
}

/** Kinds of a copied text that the plan knows with other figures; none when it cannot be read. */
export function clashesOf(text: string): readonly KindClash[] {
  const { plan, book } = planNow();
  const read = readClip(text, (kind) => book.kind(kind) !== undefined);
  return read.ok ? pasteClashes(plan, read.clip) : [];
}

/**
 * Pastes objects from a text; says why it cannot, or null. Without an answer it asks first where
 * a kind has other figures in this plan.
 */
export function pasteText(text: string, answer?: ClashAnswer): string | null {
  const { plan, layoutId, book } = planNow();
  const isKnown = (kind: string) => book.kind(kind) !== undefined;
  const read = readClip(text, isKnown);
  if (!read.ok) {
    windowNow().announce(words.nothingPasted(read.reason));
    return read.reason;
  }
  const { clip } = read;
  if (answer === undefined && pasteClashes(plan, clip).length > 0) {
    pasteKindsDialog.open({ text });
    return null;
  }
  const layout = layoutOf(plan, layoutId);
  const { beds, plantings, surroundings } = clip.group;
  const count = beds.length + plantings.length + surroundings.length;
  const title = words.pasteObjects(count);
  commit(pasteObjects(layoutId, clip, pasteShift(plan, layout, clip), title, answer));
  const ids = newIds(plan, planNow().plan, layoutId);
  if (ids.length > 0) {
    windowNow().select(ids);
    windowNow().bringIntoView(ids);
  }
  return null;
}
