/**
 * The digits 0 to 9 a text ends with; empty when it ends otherwise. By hand and not by a pattern:
 * a pattern tied to the end alone is tried from every place of the text, so that a long foreign
 * name takes the square of its length.
 */
export function trailingDigits(text: string): string {
  let from = text.length;
  while (from > 0 && isDigit(text.charCodeAt(from - 1))) from -= 1;
  return text.slice(from);
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}
