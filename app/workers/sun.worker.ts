import { expose } from "comlink";
import { createSunAnswers } from "./sun-answers.ts";

const api = createSunAnswers();

export type SunApi = typeof api;

expose(api);
