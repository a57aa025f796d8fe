import { wheelchairSoftWay } from "../../src/rules/wheelchair-soft-way.ts";
import { bed, gardenWith, gate, path } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const home = [
  gate("gate", { at: [0, 19_990], width: 1000 }),
  bed("salads", { x: -600, y: 8000, w: 1200, h: 2500, name: "Salads" }),
];
const to = (surface: "bark" | "paving" | "firm-gravel") =>
  path("walk", { from: [0, 20_000], to: [0, 10_600], width: 1100, surface, name: "Long walk" });
const lawn = { cover: "lawn" } as const;

testRule(wheelchairSoftWay, {
  passes: {
    "a paved way over lawn": gardenWith(
      { gardener: { wheelchair: true }, ground: lawn },
      to("paving"),
      ...home,
    ),
    "a way of firm gravel": gardenWith(
      { gardener: { wheelchair: true }, ground: lawn },
      to("firm-gravel"),
      ...home,
    ),
    "a paved yard": gardenWith({ gardener: { wheelchair: true }, ground: { cover: "paving" } }, ...home),
    "lawn where no wheelchair is used": gardenWith({ ground: lawn }, ...home),
  },
  flags: {
    "a way over lawn, to be laid with a firm path": {
      garden: gardenWith({ gardener: { wheelchair: true }, ground: lawn }, ...home),
      measured: [0],
      title: "The ground of the yard is too soft for a wheelchair",
      waysOut: ["Lay a firm path along the way"],
    },
    "a path of bark": {
      garden: gardenWith({ gardener: { wheelchair: true }, ground: lawn }, to("bark"), ...home),
      measured: [0],
      title: "Long walk is too soft for a wheelchair",
      waysOut: ["Lay firm gravel on it"],
    },
  },
});
