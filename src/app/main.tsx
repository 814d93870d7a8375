import "./no-code-from-text.ts";
// What all sheets of style build on comes first, what a small screen overrides last.
import "./faces.css";
import "./theme.css";
import "./base.css";
import "./window.css";
import "../panel/form/fields.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { listenForFaults } from "../store/keeping/diagnostics.ts";
import { keepProgramHere } from "../store/keeping/program-update.ts";
import { watchGround, watchSeedLots } from "../store/plan/seed-checks.ts";
import { fetchWhenIdle } from "./fetch-when-idle.ts";
import { startSession } from "./session.ts";
import { App } from "./App.tsx";
import "./narrow.css";
import "./lying.css";
import "./print.css";

/** So long the window waits for its plan before it shows itself without, milliseconds. */
const PATIENCE_MS = 700;

listenForFaults(window);
const root = document.getElementById("root");
if (!root) throw new Error("The page has no root element.");
const opened = startSession(async () => (await import("./first-sample.ts")).firstSample);
// The plan first: the window is drawn once and whole, unless the storage keeps it waiting.
await Promise.race([opened, new Promise((waited) => setTimeout(waited, PATIENCE_MS))]);
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
watchSeedLots();
watchGround();
await opened;
fetchWhenIdle();
// Under development every file is new each time: nothing is kept.
if (import.meta.env.PROD) await keepProgramHere("./service-worker.js");
