/** What the themes are called where one is picked. */
import type { ThemeChoice } from "../state/preferences.ts";

export const themeWords: Readonly<Record<ThemeChoice, string>> = {
  system: "Theme: system",
  light: "Theme: light",
  dark: "Theme: dark",
  sun: "Theme: bright sun",
  night: "Theme: strong dark",
};
