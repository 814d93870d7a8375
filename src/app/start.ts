/**
 * The first to run, long before the window's program has been received and compiled: the browser's
 * storage is opened meanwhile, which takes its time on a first visit.
 */
import "./no-code-from-text.ts";
import { askRememberedPlans } from "../store/keeping/last-plan.ts";

askRememberedPlans();
await import("./main.tsx");
