/** The checks of ground together, as they are joined to the rest. */
import type { GroundReckoning } from "../checks/ground-checks.ts";
import { findMarks } from "./ground-marks.ts";
import {
  describeClearedEarly,
  describeDateOrder,
  describeMark,
  describeRotation,
  describeVolunteers,
} from "./ground-words.ts";
import { findClearedEarly, findDateOrder } from "./planting-days.ts";
import { findRotation } from "./rotation.ts";
import { findVolunteers } from "./volunteers.ts";

export const groundReckoning: GroundReckoning = {
  volunteers: { run: findVolunteers, describe: describeVolunteers },
  rotation: { run: findRotation, describe: describeRotation },
  marks: { run: findMarks, describe: describeMark },
  cleared: { run: findClearedEarly, describe: describeClearedEarly },
  order: { run: findDateOrder, describe: describeDateOrder },
};
