/** Choices of this browser, not of the plan: theme and letter keys. Kept in local storage. */
import { create } from "zustand";
import { oneOf, stored } from "../../store/window/stored.ts";

/** `sun` and `night`: light and dark with words at 7:1. */
export const themeChoices = ["system", "light", "dark", "sun", "night"] as const;
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

const storedTheme = stored("wideberth.theme", oneOf(themeChoices));
const storedLetters = stored("wideberth.letter-keys", oneOf(["on", "off"]));

const darkScheme = matchMedia("(prefers-color-scheme: dark)");
const moreContrast = matchMedia("(prefers-contrast: more)");

function resolved(choice: ThemeChoice): Theme {
  if (choice === "system") return darkScheme.matches ? "dark" : "light";
  return choice === "dark" || choice === "night" ? "dark" : "light";
}

/** The attributes are always set, so that styles and the sheet read one thing. */
function shown(choice: ThemeChoice): Theme {
  const theme = resolved(choice);
  const isStrong = choice === "sun" || choice === "night" || moreContrast.matches;
  const { dataset } = document.documentElement;
  dataset["contrast"] = isStrong ? "more" : "usual";
  dataset.theme = theme;
  return theme;
}

export const usePreferences = create<Preferences>()((set) => ({
  themeChoice: storedTheme.load(),
  theme: shown(storedTheme.load()),
  hasLetterKeys: storedLetters.load() === "on",
  chooseTheme: (themeChoice) => {
    storedTheme.save(themeChoice);
    set({ themeChoice, theme: shown(themeChoice) });
  },
  setLetterKeys: (hasLetterKeys) => {
    storedLetters.save(hasLetterKeys ? "on" : "off");
    set({ hasLetterKeys });
  },
}));

for (const query of [darkScheme, moreContrast]) {
  query.addEventListener("change", () => {
    usePreferences.setState((state) => ({ theme: shown(state.themeChoice) }));
  });
}
