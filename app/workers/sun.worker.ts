import { exposeInWords } from "./answer-in-words.ts";
import { createSunAnswers } from "./sun-answers.ts";

const api = createSunAnswers();

export type SunApi = typeof api;

exposeInWords({ ...api });
