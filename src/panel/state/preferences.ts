/** Choices of this browser, not of the plan: theme and letter keys. Kept in local storage. */
import { create } from "zustand";

export const themeChoices = ["system", "light", "dark"] as const;
export type ThemeChoice = (typeof themeChoices)[number];
export type Theme = "light" | "dark";

interface Preferences {
  readonly themeChoice: ThemeChoice;
  /** The theme on screen. */
  readonly theme: Theme;
  /** Whether single letters pick tools; people who dictate need them off. */
  readonly hasLetterKeys: boolean;
  readonly chooseTheme: (choice: ThemeChoice) => void;
  readonly setLetterKeys: (isOn: boolean) => void;
}

const THEME_KEY = "wideberth.theme";
const LETTERS_KEY = "wideberth.letter-keys";

/** Storage may be forbidden or full: the choice then lasts until the page is closed. */
function stored(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function store(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    return;
  }
}

const darkScheme = matchMedia("(prefers-color-scheme: dark)");

function resolved(choice: ThemeChoice): Theme {
  if (choice !== "system") return choice;
  return darkScheme.matches ? "dark" : "light";
}

/** The attribute is always set, so that styles and the sheet read one thing. */
function shown(choice: ThemeChoice): Theme {
  const theme = resolved(choice);
  document.documentElement.dataset.theme = theme;
  return theme;
}

function storedTheme(): ThemeChoice {
  const choice = stored(THEME_KEY);
  return themeChoices.find((entry) => entry === choice) ?? "system";
}

export const usePreferences = create<Preferences>()((set) => ({
  themeChoice: storedTheme(),
  theme: shown(storedTheme()),
  hasLetterKeys: stored(LETTERS_KEY) !== "off",
  chooseTheme: (themeChoice) => {
    store(THEME_KEY, themeChoice);
    set({ themeChoice, theme: shown(themeChoice) });
  },
  setLetterKeys: (hasLetterKeys) => {
    store(LETTERS_KEY, hasLetterKeys ? "on" : "off");
    set({ hasLetterKeys });
  },
}));

darkScheme.addEventListener("change", () => {
  usePreferences.setState((state) => ({ theme: shown(state.themeChoice) }));
});
