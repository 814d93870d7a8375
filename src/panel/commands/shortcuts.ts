/** Which key press means which command. */
import type { Chord, Command } from "./command.ts";
import { keysOf } from "./own-keys.ts";
import * as words from "./command-words.ts";

/** What of a key press decides. */
export interface KeyPress {
  readonly key: string;
  /** The place of the key, for layouts that print no Latin letters. */
  readonly code: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

export interface KeySituation {
  /** The focus is where letters are text or pick an entry. */
  readonly isTyping: boolean;
  /** The focus is in a text that is being changed, with an undo of its own. */
  readonly hasDraft: boolean;
  readonly isDialogOpen: boolean;
  readonly hasLetterKeys: boolean;
  /** The focus is on the sheet. */
  readonly isOnSheet: boolean;
}

const LATIN = /^\p{Script=Latin}$/u;
const OTHER_LETTER = /^\p{L}$/u;

/**
 * The key by its printed character. Only where the layout prints a letter that is not Latin does
 * the place of the key decide: `я` on the key that is `z` elsewhere is `z`.
 */
export function keyOf({ key, code }: Pick<KeyPress, "key" | "code">): string {
  const place = /^Key([A-Z])$/.exec(code)?.[1];
  const isForeign = OTHER_LETTER.test(key) && !LATIN.test(key);
  return isForeign && place !== undefined ? place.toLowerCase() : key.toLowerCase();
}

function isChord(press: KeyPress, chord: Chord): boolean {
  if (chord.key.toLowerCase() !== keyOf(press)) return false;
  if ((chord.isCommand ?? false) !== (press.ctrlKey || press.metaKey)) return false;
  // A sign such as ? may need Shift on one layout and not on another.
  const isSign = chord.key.length === 1 && !OTHER_LETTER.test(chord.key);
  return isSign || (chord.isShift ?? false) === press.shiftKey;
}

/** Chords of letters and signs alone, which people who dictate switch off. */
function isLetterKey({ key, isCommand }: Chord): boolean {
  return key.length === 1 && isCommand !== true;
}

/** Chords that every text field has a meaning of its own for. */
function isTextKey({ key, isCommand }: Chord): boolean {
  return isCommand === true ? key === "a" || key === "d" : true;
}

function isFree(chord: Chord, situation: KeySituation): boolean {
  if (chord.where === "sheet") return situation.isOnSheet;
  if (situation.isDialogOpen) return false;
  if (isTextKey(chord) && situation.isTyping) return false;
  if (chord.isCommand === true && situation.hasDraft) return false;
  return !isLetterKey(chord) || situation.hasLetterKeys;
}

/** The command of a key press; null when it is none of ours. */
export function commandOf(
  commands: readonly Command[],
  press: KeyPress,
  situation: KeySituation,
): Command | null {
  if (press.altKey) return null;
  for (const command of commands) {
    if (command.isNative === true) continue;
    for (const chord of keysOf(command)) {
      if (!isChord(press, chord)) continue;
      if (command.isEverywhere === true || isFree(chord, situation)) return command;
    }
  }
  return null;
}

const KEY_WORDS: ReadonlyMap<string, string> = new Map([["ContextMenu", words.menuKey]]);

/** `Ctrl or Cmd + Shift + Z`. */
export function chordText({ key, isCommand, isShift }: Chord): string {
  const parts = [
    isCommand === true ? words.commandKey : "",
    isShift === true ? words.shiftKey : "",
    KEY_WORDS.get(key) ?? (key.length === 1 ? key.toUpperCase() : key),
  ];
  return parts.filter((part) => part !== "").join(" + ");
}

export function keysText(command: Command): string {
  return keysOf(command).map(chordText).join(", ");
}

const HELD_ALONE = new Set(["Control", "Meta", "Shift", "Alt", "AltGraph", "CapsLock"]);

/** The chord of a press, to be given to a command; null while only Ctrl, Shift or the like is down. */
export function pressedChord(press: KeyPress): Chord | null {
  if (HELD_ALONE.has(press.key) || press.altKey) return null;
  const key = keyOf(press);
  const isSign = key.length === 1 && !OTHER_LETTER.test(key);
  return {
    key: key.length === 1 ? key : press.key,
    ...(press.ctrlKey || press.metaKey ? { isCommand: true } : {}),
    ...(press.shiftKey && !isSign ? { isShift: true } : {}),
  };
}

/** The other command that has these keys already, if any. */
export function holderOf(
  commands: readonly Command[],
  chord: Chord,
  except: string,
): Command | undefined {
  const text = chordText(chord);
  return commands.find(
    (command) => command.id !== except && keysOf(command).some((own) => chordText(own) === text),
  );
}
