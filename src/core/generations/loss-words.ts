/** Small words for what a line has lost. */

/** `6.3 %`; what is under a tenth of a percent says so. */
export function percentText(share: number): string {
  const percent = share * 100;
  if (percent === 0) return "0 %";
  if (percent < 0.1) return "under 0.1 %";
  return `${percent >= 10 ? Math.round(percent) : Number(percent.toFixed(1))} %`;
}

/** An effective population, never rounded up: `3.9`, `24`. */
export function plantsText(effective: number): string {
  const whole = Math.floor(effective + 1e-9);
  return effective >= 10 || effective - whole < 0.05
    ? String(whole)
    : String(Math.floor(effective * 10 + 1e-9) / 10);
}
