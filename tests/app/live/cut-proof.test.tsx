import { act, renderHook } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { provideProver, useProvenTakeoff } from "../../../app/live/cut-proof.ts";
import { type AimedPlan, type CutJob, proveBoardPlan, takeoff } from "../../../src/index.ts";
import { bed, gardenOf } from "../../helpers/garden-of.ts";

/** So many lengths that no plan of them is proven at once. */
const garden = gardenOf(
  ...Array.from({ length: 18 }, (_, i) => bed(`b${i}`, { w: 900 + 37 * i, h: 2000 + 53 * i })),
);
const live = takeoff(garden);
const [plan] = live.boardPlans;

afterEach(() => provideProver(null));

/** A prover that answers when it is told to. */
function slowProver() {
  const waiting: { job: CutJob; answer(found: AimedPlan): void; fail(): void }[] = [];
  provideProver(
    (job) =>
      new Promise((answer, reject) => {
        waiting.push({ job, answer, fail: () => reject(new Error("out of memory")) });
      }),
  );
  return waiting;
}

describe("the takeoff that is shown", () => {
  it("is the one made at once until its plans are proven, and says so", async () => {
    const waiting = slowProver();
    const { result } = renderHook(() => useProvenTakeoff(garden, live, true));
    expect(result.current.takeoff).toBe(live);
    expect(result.current.stateOf(plan!.key)).toEqual({ state: "proving" });

    const found = await proveBoardPlan(waiting[0]!.job);
    await act(async () => waiting[0]!.answer(found));
    expect(result.current.takeoff.boardPlans[0]?.plan).toEqual(found.plan);
    expect(result.current.takeoff.total).toBeLessThan(live.total);
    expect(result.current.stateOf(plan!.key)).toEqual(
      found.plan.proven ? { state: "proven" } : { state: "bounded", excess: found.excess },
    );
  });

  it("asks for nothing while a bed is dragged", () => {
    const waiting = slowProver();
    const { result, rerender } = renderHook(({ resting }) => useProvenTakeoff(garden, live, resting), {
      initialProps: { resting: false },
    });
    expect(waiting).toHaveLength(0);
    expect(result.current.stateOf(plan!.key)).toEqual({ state: "bounded", excess: plan!.excess });
    rerender({ resting: true });
    const open = live.boardPlans.filter((one) => !one.plan.proven);
    expect(waiting).toHaveLength(open.length);
  });

  it("asks once for each job, however often it is shown", () => {
    const waiting = slowProver();
    const first = renderHook(() => useProvenTakeoff(garden, live, true));
    const asked = waiting.length;
    first.rerender();
    renderHook(() => useProvenTakeoff(garden, takeoff({ ...garden }), true));
    expect(waiting).toHaveLength(asked);
  });

  it("keeps the plan made at once, with its bound, where the proof fails", async () => {
    const waiting = slowProver();
    const { result } = renderHook(() => useProvenTakeoff(garden, live, true));
    await act(async () => {
      for (const { fail } of waiting) fail();
    });
    expect(result.current.takeoff.total).toBe(live.total);
    expect(result.current.stateOf(plan!.key)).toEqual({ state: "bounded", excess: plan!.excess });
    expect(plan!.excess).toBeGreaterThan(0);
  });

  it("stands without a worker", async () => {
    // No worker can be started here: the same as a browser that has none.
    const { result } = renderHook(() => useProvenTakeoff(garden, live, true));
    await act(async () => {});
    expect(result.current.takeoff.total).toBe(live.total);
  });
});
