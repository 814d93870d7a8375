import "./no-code-from-text.ts";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { listenForFaults } from "../store/diagnostics.ts";
import { keepProgramHere } from "../store/program-update.ts";
import { startSession } from "../store/session.ts";
import { App } from "./App.tsx";
import { firstSampleText } from "./samples.ts";
import "./theme.css";
import "./base.css";
import "./window.css";
import "./header.css";
import "./lists.css";
import "./fields.css";
import "./bloom.css";
import "./season.css";
import "./tables.css";
import "./kept.css";
import "./figures.css";
import "./commands.css";
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
