/** Who can keep a pollen source from flowering, in words. */
import type { Surrounding } from "../../core/model/plan.ts";

type Reach = NonNullable<Surrounding["reach"]> | "unsaid";

export const reachWords = {
  label: "Who can cut it",
  choices: [
    { value: "unsaid", label: "not said" },
    { value: "ours", label: "we can" },
    { value: "ask", label: "its owner, if asked" },
    { value: "none", label: "nobody" },
  ] as const satisfies readonly { readonly value: Reach; readonly label: string }[],
  title: (label: string) => `Say who can cut ${label}`,
} as const;
