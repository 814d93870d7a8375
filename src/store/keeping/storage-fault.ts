/** What a refusal by the browser's storage means, in words a grower can act on. */
import * as words from "./words.ts";

/** Storage that is not there at all is told apart by this name, which browsers use too. */
const REFUSED = "SecurityError";

/** The error for a browser that offers no storage to this page. */
export function storageRefused(): DOMException {
  return new DOMException("The browser offers no storage to this page", REFUSED);
}

/** The error for storage that does not answer. */
export function storageSilent(): DOMException {
  return new DOMException("The browser's storage does not answer", "TimeoutError");
}

/** The error for storage that belongs to a newer version of this program. */
export function storageNewer(): DOMException {
  return new DOMException("The stored plans belong to a newer version", "VersionError");
}

/** Why a plan is not saved in the browser, as the end of the sentence "Not saved: ...". */
export function faultReason(error: unknown): string {
  switch (nameOf(error)) {
    case "QuotaExceededError":
      return words.storageFull;
    case REFUSED:
      return words.storageRefused;
    case "VersionError":
      return words.newerElsewhere;
    case "TimeoutError":
      return words.storageSilent;
    case "InvalidStateError":
    case "UnknownError":
      return words.connectionLost;
    default:
      return words.storeRefused;
  }
}

/** The connection died under us: opening a new one may help. Retrying helps no other fault. */
export function isLostConnection(error: unknown): boolean {
  const name = nameOf(error);
  if (name === "InvalidStateError" || name === "UnknownError") return true;
  const text = error instanceof Error ? error.message : "";
  return /connection (?:is closing|to indexed database server lost)|backing store/i.test(text);
}

export function isFull(error: unknown): boolean {
  return nameOf(error) === "QuotaExceededError";
}

/** The person closed the file dialog, or a request was withdrawn: nothing to report. */
export function isCancelled(error: unknown): boolean {
  return nameOf(error) === "AbortError";
}

function nameOf(error: unknown): string {
  return error instanceof Error || error instanceof DOMException ? error.name : "";
}
