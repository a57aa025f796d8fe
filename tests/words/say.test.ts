import { afterEach, describe, expect, it, vi } from "vitest";

/** Each test in a realm of its own: it is settled once who speaks. */
async function realm() {
  vi.resetModules();
  const [say, speaker, phrases, speakIn, make] = await Promise.all([
    import("../../src/words/say.ts"),
    import("../../src/words/speaker.ts"),
    import("../../src/words/phrases.ts"),
    import("../../src/words/speak-in.ts"),
    import("../../src/words/make-speaker.ts"),
  ]);
  return { ...say, ...speaker, ...phrases, ...speakIn, ...make };
}

afterEach(() => vi.resetModules());

describe("without a speaker", () => {
  it("says English as it is written", async () => {
    const { say, sayCount, told, listed, language } = await realm();
    expect(language()).toBe("en-US");
    expect(say`${"Squash"}: ${3} of ${"4"}`).toBe("Squash: 3 of 4");
    expect(say`Nothing`).toBe("Nothing");
    expect(told("Nothing")).toBe("Nothing");
    const beds = { one: "{{count}} bed of {{name}}", other: "{{count}} beds of {{name}}" };
    expect(sayCount(1, beds, { name: "{{count}}" })).toBe("1 bed of {{count}}");
    expect(sayCount(0, beds, { name: "x" })).toBe("0 beds of x");
    expect(sayCount(2, beds, { name: "x", count: "two" })).toBe("two beds of x");
    expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual([
      "",
      "a",
      "a and b",
      "a, b and c",
    ]);
  });
});

describe("a speaker", () => {
  const CATALOGUE = {
    "{{0}} of {{1}}": "von {{1}}: {{0}}",
    "{{count}} beds_one": "{{count}} Beet",
    "{{count}} beds_other": "{{count}} Beete",
    "Why: a bed. So {{0}}": "Warum: ein Beet. Also {{0}}",
  };

  it("turns the holes about as the language wants them, and knows colons and full stops for text", async () => {
    const { say, speakWith, makeSpeaker, language } = await realm();
    speakWith(await makeSpeaker("de", CATALOGUE));
    expect(language()).toBe("de");
    expect(say`${"a"} of ${"b"}`).toBe("von b: a");
    expect(say`Why: a bed. So ${1}`).toBe("Warum: ein Beet. Also 1");
  });

  it("picks the form for a count", async () => {
    const { sayCount, speakWith, makeSpeaker } = await realm();
    speakWith(await makeSpeaker("de", CATALOGUE));
    const beds = { one: "{{count}} bed", other: "{{count}} beds" };
    expect([0, 1, 2].map((n) => sayCount(n, beds))).toEqual(["0 Beete", "1 Beet", "2 Beete"]);
  });

  it("puts names in as they are, whatever signs are in them", async () => {
    const { say, sayCount, speakWith, makeSpeaker } = await realm();
    speakWith(
      await makeSpeaker("de", { ...CATALOGUE, "{{count}} in {{name}}_one": "{{count}} in {{name}}" }),
    );
    for (const name of ["{{1}}", "$t(Why)", "$&", "$1", "<b>", "{{count}}"]) {
      expect(say`${name} of ${"b"}`).toBe(`von b: ${name}`);
      expect(sayCount(1, { one: "{{count}} in {{name}}", other: "{{count}} in {{name}}" }, { name })).toBe(
        `1 in ${name}`,
      );
    }
  });

  it("says in English what it has no word for, in the right form, and tells of it", async () => {
    const { say, sayCount, told, speakWith, makeSpeaker } = await realm();
    const missing: string[] = [];
    speakWith(await makeSpeaker("de", {}, (english) => missing.push(english)));
    expect(say`${"a"} or ${"b"}`).toBe("a or b");
    expect(told("Compost")).toBe("Compost");
    expect(sayCount(1, { one: "{{count}} post", other: "{{count}} posts" })).toBe("1 post");
    expect(missing).toEqual(["{{0}} or {{1}}", "Compost", "{{count}} posts"]);
  });

  it("is not another one in the midst of running", async () => {
    const { speakWith, makeSpeaker } = await realm();
    const [first, second] = [await makeSpeaker("de", {}), await makeSpeaker("en-GB", {})];
    speakWith(first);
    speakWith(first);
    expect(() => speakWith(second)).toThrow("already speaking de");
  });

  it("comes with its words for each language", async () => {
    const { speakIn, language, listed, midSentence } = await realm();
    await speakIn("de");
    expect(language()).toBe("de");
    expect(listed(["Tomate", "Gurke", "Kohl"])).toBe("Tomate, Gurke und Kohl");
    expect(midSentence("Tomate")).toBe("Tomate");
  });

  it("is not needed for English as it is written", async () => {
    const { speakIn, speaking, midSentence } = await realm();
    await speakIn("en-US");
    expect(speaking()).toBeNull();
    expect(midSentence("Tomato")).toBe("tomato");
  });
});
