/** What the printer's setting says of itself. */

export const offsetTooLarge = (mostMm: number) => `At most ${mostMm} mm either way`;
