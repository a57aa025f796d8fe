/** The takeoff behind the cost of a way out: sent for once a snag is on the screen, not with the page. */
export { costOf } from "../../../src/index.ts";
