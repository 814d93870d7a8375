// What all sheets of style build on comes first, what a small screen overrides last.
import "./faces.css";
import "./theme.css";
import "./base.css";
import "./window.css";
import "../panel/form/fields.css";
import { StrictMode } from "react";
import { flushSync } from "react-dom";
import { createRoot } from "react-dom/client";
import { listenForFaults } from "../store/keeping/diagnostics.ts";
import { keepProgramHere } from "../store/keeping/program-update.ts";
import { beginFirstPicture, endFirstPicture } from "../store/window/first-picture.ts";
import { watchGround, watchSeedLots } from "../store/plan/seed-checks.ts";
import { fetchSoonWanted, untilIdle } from "./when-idle.ts";
import { startSession } from "./session.ts";
import { App } from "./App.tsx";
import { fetchBloomBody } from "../panel/bloom/BloomStrip.tsx";
import "./narrow.css";
import "./lying.css";
import "./print.css";

/** So long the window waits for its plan before it shows itself without, milliseconds. */
const PATIENCE_MS = 700;

listenForFaults(window);
const root = document.getElementById("root");
if (!root) throw new Error("The page has no root element.");
const opened = startSession(async () => (await import("./first-sample.ts")).firstSample);
// The plan first: the window is drawn once and whole, unless storage or network keep it waiting.
await Promise.race([opened, new Promise((waited) => setTimeout(waited, PATIENCE_MS))]);
beginFirstPicture();
// Received while the window is drawn, not run before that; missing, it is asked for by the strip.
fetchBloomBody().catch(() => undefined);
// In one go, effects and all: the sheet takes its size and is drawn before anything is painted.
flushSync(() =>
  createRoot(root).render(
    <StrictMode>
      <App />
    </StrictMode>,
  ),
);
await endFirstPicture();
await opened;
await untilIdle();
// What is kept on the device and what findings have more to say comes after the first picture.
watchSeedLots();
watchGround();
fetchSoonWanted();
// Under development every file is new each time: nothing is kept.
if (import.meta.env.PROD) await keepProgramHere("./service-worker.js");
