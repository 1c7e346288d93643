/**
 * The one script of the page: what page and worker share is loaded once. Where there is a document it is the page, else the
 * worker that the page started.
 */
import { startPage } from "./main.tsx";
import { startWorking } from "./worker/worker.ts";

if (typeof document === "undefined") startWorking();
else startPage();
