/**
 * The second thread of a long search: takes its share and ends with the search.
 */
import { workerData } from "node:worker_threads";
import { type Share, takeShare } from "../sequence/partner.ts";

takeShare(workerData as Share);
