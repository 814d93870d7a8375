/** Every built-in kind, in the order in which a shared botanical name is resolved. */
import { amaranthaceae } from "./amaranthaceae.ts";
import { amaryllidaceae } from "./amaryllidaceae.ts";
import { apiaceae } from "./apiaceae.ts";
import { asteraceae } from "./asteraceae.ts";
import { brassicaceae } from "./brassicaceae.ts";
import type { Kind } from "./crop.ts";
import { cucurbitaceae } from "./cucurbitaceae.ts";
import { fabaceae } from "./fabaceae.ts";
import { withHeatFigures } from "./heat-figures.ts";
import { otherFamilies } from "./other-families.ts";
import { poaceae } from "./poaceae.ts";
import { withRipening } from "./ripening.ts";
import { solanaceae } from "./solanaceae.ts";

export const kinds: readonly Kind[] = [
  ...solanaceae,
  ...cucurbitaceae,
  ...fabaceae,
  ...brassicaceae,
  ...asteraceae,
  ...amaranthaceae,
  ...apiaceae,
  ...amaryllidaceae,
  ...poaceae,
  ...otherFamilies,
].map((kind) => withRipening(withHeatFigures(kind)));
