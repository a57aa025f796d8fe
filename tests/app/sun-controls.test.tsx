import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { HoursDrawnField } from "../../app/ledger/sun/HoursDrawnField.tsx";
import { MomentSection } from "../../app/ledger/sun/MomentSection.tsx";
import { FIRST_MOMENT, openMoment, useMoment } from "../../app/moment/moment.ts";
import { NorthArrow } from "../../app/plan/NorthArrow.tsx";
import { MomentBar } from "../../app/plan/shadows/MomentBar.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { gardenWith } from "../helpers/garden-of.ts";
import { onTheBoard } from "./ledger-scene.ts";

const motion = vi.spyOn(window, "matchMedia");
const wantsLessMotion = (less: boolean) =>
  motion.mockImplementation(
    (query) => ({ ...new EventTarget(), matches: less, media: query }) as MediaQueryList,
  );

const hour = () => screen.getByRole<HTMLInputElement>("slider", { name: "Hour" });
const day = () => screen.getByRole<HTMLInputElement>("slider", { name: "Day" });

beforeEach(() => {
  wantsLessMotion(true);
  onTheBoard(gardenWith({ site: { latitude: 45, longitude: 0, north: 0, timeZone: "UTC" } }));
  useMoment.setState(FIRST_MOMENT);
  openMoment();
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

describe("the day and hour of the shadows", () => {
  it("are set by sliders that say the moment in words", () => {
    render(<MomentSection />);
    fireEvent.change(hour(), { target: { value: String(15 * 60 + 35) } });
    fireEvent.change(day(), { target: { value: "171" } });
    expect(useMoment.getState()).toMatchObject({ day: "2026-06-21", minutes: 935 });
    expect(day().getAttribute("aria-valuetext")).toBe("21 June");
    expect(hour().getAttribute("aria-valuetext")).toMatch(/^15:35, 21 June: shadows fall east, /);
    expect(screen.getByText(hour().getAttribute("aria-valuetext") ?? "")).toBeTruthy();
  });

  it("jump to sunrise, noon and sunset, and to the days at which the sun turns", async () => {
    render(<MomentSection />);
    await userEvent.click(screen.getByRole("button", { name: "December solstice, 21 Dec" }));
    expect(useMoment.getState().day).toBe("2026-12-21");
    await userEvent.click(screen.getByRole("button", { name: /^Sunrise, 7:\d\d$/ }));
    // The first step with the sun up, as its words prove.
    expect(hour().getAttribute("aria-valuetext")).toContain("shadows fall north-west");
    await userEvent.click(screen.getByRole("button", { name: /^Sunset, 16:\d\d$/ }));
    expect(hour().getAttribute("aria-valuetext")).toContain("shadows fall north-east");
    await userEvent.click(screen.getByRole("button", { name: /^Noon, .* by the sun$/ }));
    expect(hour().getAttribute("aria-valuetext")).toMatch(/^Noon, 21 December: shadows fall north/);
  });

  it("take today from the clock of the device, leap day or not", async () => {
    vi.setSystemTime(new Date(2028, 1, 29, 15));
    render(<MomentSection />);
    await userEvent.click(screen.getByRole("button", { name: "Today" }));
    expect(useMoment.getState().day).toBe("2026-02-28");
  });

  it("say that the sun stays up or down where it does", () => {
    onTheBoard(gardenWith({ site: { latitude: 75, longitude: 0 } }));
    useMoment.setState({ day: "2026-12-21" });
    render(<MomentSection />);
    expect(screen.getByText("the sun stays down")).toBeTruthy();
    expect(screen.queryByRole("button", { name: /^Sunrise/ })).toBeNull();
    act(() => useMoment.setState({ day: "2026-06-21" }));
    expect(screen.getByText("the sun stays up")).toBeTruthy();
  });

  it("lead to where a time zone is chosen while hours are the sun's own", async () => {
    onTheBoard(gardenWith({ site: { timeZone: null } }));
    render(<MomentSection />);
    await userEvent.click(screen.getByRole("button", { name: "Choose a time zone" }));
    expect(useEditor.getState().leaf).toBe("site");
    cleanup();
    onTheBoard(gardenWith({ site: { timeZone: "Europe/Paris" } }));
    render(<MomentSection />);
    expect(screen.queryByRole("button", { name: "Choose a time zone" })).toBeNull();
  });
});

describe("a day that plays", () => {
  const minutes = () => useMoment.getState().minutes;

  it("goes by in leaps for who wants less motion, stops at sunset and tells where it is", () => {
    vi.useFakeTimers();
    render(<MomentSection />);
    act(() => useMoment.setState({ minutes: 16 * 60 + 20, day: "2026-03-20" }));
    fireEvent.click(screen.getByRole("button", { name: "Play the day" }));
    act(() => vi.advanceTimersByTime(1000));
    expect(minutes()).toBe(17 * 60 + 20);
    act(() => vi.advanceTimersByTime(1000));
    expect(useMoment.getState().playing, "the sun sets about 18:10").toBe(false);
    expect(minutes()).toBeGreaterThan(18 * 60);
    expect(minutes()).toBeLessThan(18 * 60 + 20);
    expect(useEditor.getState().message.text).toMatch(/^18:\d\d, 20 March: /);
    // Played again it begins in the morning.
    fireEvent.click(screen.getByRole("button", { name: "Play the day" }));
    expect(minutes()).toBeLessThan(6 * 60 + 20);
    act(() => vi.advanceTimersByTime(1000));
    fireEvent.click(screen.getByRole("button", { name: "Pause" }));
    const paused = minutes();
    act(() => vi.advanceTimersByTime(5000));
    expect(minutes()).toBe(paused);
  });

  it("moves with every frame otherwise, and is stopped by a hand on the hour", () => {
    vi.useFakeTimers();
    wantsLessMotion(false);
    render(<MomentSection />);
    fireEvent.click(screen.getByRole("button", { name: "Play the day" }));
    act(() => vi.advanceTimersByTime(400));
    const early = minutes();
    expect(early).toBeGreaterThan(10 * 60);
    act(() => vi.advanceTimersByTime(1200));
    // The half day of an equinox in 12 s: a minute a sixtieth of a second.
    expect(minutes() - early).toBeGreaterThan(50);
    expect(minutes() - early).toBeLessThan(80);
    fireEvent.change(hour(), { target: { value: "500" } });
    act(() => vi.advanceTimersByTime(1000));
    expect(minutes()).toBe(500);
    expect(screen.getByRole("button", { name: "Play the day" })).toBeTruthy();
  });

  it("has nothing to play in the polar night, and stops when the leaf is shut", () => {
    vi.useFakeTimers();
    const { unmount } = render(<MomentSection />);
    fireEvent.click(screen.getByRole("button", { name: "Play the day" }));
    expect(useMoment.getState().playing).toBe(true);
    act(() => openMoment()());
    expect(useMoment.getState()).toMatchObject({ playing: false, open: false });
    unmount();
    onTheBoard(gardenWith({ site: { latitude: 75 } }));
    act(() => useMoment.setState({ day: "2026-12-21", open: true }));
    render(<MomentSection />);
    fireEvent.click(screen.getByRole("button", { name: "Play the day" }));
    expect(useMoment.getState().playing).toBe(false);
  });
});

describe("on the plan", () => {
  it("the hour stands at its foot while shadows are drawn, and only then", () => {
    render(<MomentBar />);
    const bar = screen.getByRole("group", { name: "Shadows on the plan" });
    expect(bar.textContent).toContain("10:00 20 Mar");
    fireEvent.change(within(bar).getByRole("slider"), { target: { value: "840" } });
    expect(useMoment.getState().minutes).toBe(840);
    act(() => useMoment.setState({ shadows: false }));
    expect(screen.queryByRole("group")).toBeNull();
    act(() => useMoment.setState({ shadows: true, open: false }));
    expect(screen.queryByRole("group")).toBeNull();
  });

  it("the sun goes round the north arrow, from where it stands, and not by night", () => {
    onTheBoard(gardenWith({ site: { latitude: 45, longitude: 0, north: 30, timeZone: "UTC" } }));
    const { container } = render(<NorthArrow />);
    const turned = () =>
      Number(
        /rotate\(([^)]+)\)/.exec(container.querySelector(".north-sun")?.getAttribute("transform") ?? "")?.[1],
      );
    act(() => useMoment.setState({ minutes: 12 * 60 + 10 }));
    // South, 180°, and north is turned by 30°.
    expect(Math.abs(turned() - 210)).toBeLessThan(4);
    act(() => useMoment.setState({ minutes: 60 }));
    expect(container.querySelector(".north-sun")).toBeNull();
  });

  it("hours are drawn as lines, as lines over a tone, or not", async () => {
    render(<HoursDrawnField />);
    await userEvent.selectOptions(screen.getByLabelText("Hours on the plan"), "Lines over a tone");
    expect(useMoment.getState().hoursDrawn).toBe("tone");
  });
});
