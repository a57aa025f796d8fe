import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { LanguageField } from "../../app/language/LanguageField.tsx";
import { chooseLanguage, chosenLanguage, languageFor } from "../../app/language/language.ts";
import { answerInWords } from "../../app/workers/answer-in-words.ts";

const ALL = ["en-US", "en-GB", "de"] as const;

afterEach(() => {
  cleanup();
  localStorage.clear();
});

it.each([
  [["de-AT", "en"], "de"],
  [["de"], "de"],
  [["en-GB", "de"], "en-GB"],
  [["en-AU"], "en-GB"],
  [["en-NZ"], "en-GB"],
  [["en-IE"], "en-GB"],
  [["en-CA", "de"], "en-US"],
  [["fr", "de", "en"], "de"],
  [["den"], "en-US"],
  [["fr"], "en-US"],
  [[], "en-US"],
])("meets a device that asks for %j in %s", (wishes, language) => {
  expect(languageFor(wishes, ALL)).toBe(language);
});

it("meets no device in a language that is not complete", () => {
  expect(languageFor(["de"], ["en-US"])).toBe("en-US");
  expect(languageFor(["en-GB", "de"], ["en-US", "de"])).toBe("en-US");
});

it("keeps the choice, and loads the page again", () => {
  const loadAgain = vi.fn();
  expect(chosenLanguage()).toBe("en-US");
  chooseLanguage("de", loadAgain);
  expect(loadAgain).toHaveBeenCalledOnce();
  expect(chosenLanguage()).toBe("de");
  localStorage.setItem("bedwright-language", "xx");
  expect(chosenLanguage()).toBe("en-US");
});

it("has a worker wait for its words, and answer in the order it was asked", async () => {
  const said: string[] = [];
  let arrive = () => {};
  const words = new Promise<void>((done) => {
    arrive = done;
  });
  const worker = answerInWords({ ask: (name: string) => said.push(name) }, () => words);
  await worker.ask("before");
  void worker.speak("de");
  const answers = [worker.ask("first"), worker.ask("second")];
  await Promise.resolve();
  expect(said).toEqual(["before"]);
  arrive();
  await Promise.all(answers);
  expect(said).toEqual(["before", "first", "second"]);
});

it("has a worker answer in English when its words cannot be fetched", async () => {
  const worker = answerInWords({ ask: () => 7 }, () => Promise.reject(new Error("offline")));
  await worker.speak("de");
  expect(await worker.ask()).toBe(7);
});

it("offers each language by its own name, and loads nothing again for the one that is spoken", () => {
  const onChoose = vi.fn();
  render(<LanguageField onChoose={onChoose} />);
  const spoken = screen.getByRole("button", { name: "English (US)" });
  expect(spoken.getAttribute("aria-pressed")).toBe("true");
  fireEvent.click(spoken);
  expect(onChoose).not.toHaveBeenCalled();
  const german = screen.getByRole("button", { name: "Deutsch" });
  expect(german.lang).toBe("de");
  fireEvent.click(german);
  expect(onChoose).toHaveBeenCalledExactlyOnceWith("de");
});
