/** What a refusal by the browser's storage means, in words a grower can act on. */

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
      return "the browser's storage is full; save the plan to a file";
    case REFUSED:
      return "this browser lets the page store nothing (a private window, or storage is switched off); save the plan to a file";
    case "VersionError":
      return "a newer Wideberth has been opened in this browser; reload this page";
    case "TimeoutError":
      return "the browser's storage does not answer; save the plan to a file";
    case "InvalidStateError":
    case "UnknownError":
      return "the connection to the browser's storage is lost; save the plan to a file, then reload";
    default:
      return "the browser refused to store it; save the plan to a file";
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
