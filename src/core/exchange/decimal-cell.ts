/** To the billionth, never with an exponent and without noughts at the end. */
export function decimalCell(value: number): string {
  let text = value.toFixed(9);
  while (text.endsWith("0")) text = text.slice(0, -1);
  return text.endsWith(".") ? text.slice(0, -1) : text;
}
