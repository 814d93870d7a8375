/**
 * Tells a damaged text from a whole one. SHA-256 where the browser offers it (secure contexts);
 * elsewhere a 32-bit FNV-1a over the text's UTF-16 code units, which still catches any single
 * changed character. The name of the sum stands before it, so either kind can be verified later.
 */

const FNV_OFFSET = 0x81_1c_9d_c5;
const FNV_PRIME = 0x01_00_01_93;

export async function checksum(text: string): Promise<string> {
  return canHash() ? `sha256:${await sha256(text)}` : `fnv1a:${fnv1a(text)}`;
}

/** Whether a text is the one its checksum was made from. */
export async function isWhole(text: string, sum: string): Promise<boolean> {
  if (sum.startsWith("fnv1a:")) return sum === `fnv1a:${fnv1a(text)}`;
  // Without SHA-256 the sum cannot be looked at; reading and validating the text still decides.
  return !canHash() || sum === `sha256:${await sha256(text)}`;
}

function canHash(): boolean {
  return typeof crypto !== "undefined" && "subtle" in crypto;
}

async function sha256(text: string): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

function fnv1a(text: string): string {
  let hash = FNV_OFFSET;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), FNV_PRIME);
  }
  return (hash >>> 0).toString(16).padStart(8, "0");
}
