import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
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
import "./tables.css";
import "./narrow.css";

const root = document.getElementById("root");
if (!root) throw new Error("The page has no root element.");
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
await startSession(firstSampleText);
