import "./no-code-from-text.ts";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { listenForFaults } from "../store/keeping/diagnostics.ts";
import { keepProgramHere } from "../store/keeping/program-update.ts";
import { startSession } from "./session.ts";
import { App } from "./App.tsx";
import { firstSampleText } from "./samples.ts";
import "./theme.css";
import "./base.css";
import "./window.css";
import "../panel/window/header.css";
import "../panel/findings/findings.css";
import "../panel/form/fields.css";
import "../panel/bloom/bloom.css";
import "../panel/season/season.css";
import "../panel/tables/tables.css";
import "../panel/keeping/kept.css";
import "../panel/figures/figures.css";
import "../panel/commands/commands.css";
import "./narrow.css";

listenForFaults(window);
const root = document.getElementById("root");
if (!root) throw new Error("The page has no root element.");
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
await startSession(firstSampleText);
// Under development every file is new each time: nothing is kept.
if (import.meta.env.PROD) await keepProgramHere("./service-worker.js");
