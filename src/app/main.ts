import { mount } from "svelte";
import App from "./App.svelte";
import { newerFirst } from "./offline/offline.svelte";
import "./theme.css";
import "./print.css";

const target = document.getElementById("app");
// A newer program takes over at the start, never in the middle of work.
if (target && !(await newerFirst())) mount(App, { target });
