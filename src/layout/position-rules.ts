/**
 * The rules whose snags a bed can be rid of by standing somewhere else, each with the reason. All other rules speak of
 * how a bed is made, of what it stands on or of things that are not beds: there a shift is no remedy, but it must make
 * no new snag of them either.
 */
export const POSITION_RULES: ReadonlyMap<string, string> = new Map([
  ["outside-yard", "the bed sticks out of the yard"],
  ["overlapping", "it stands in something else"],
  ["bed-in-path", "it stands in a drawn path"],
  ["blocked-door", "it stands before a door or gate"],
  ["blocked-tap", "it stands too near a tap"],
  ["narrow-path", "the gap beside it is neither a joint nor a path"],
  ["unreachable-soil", "something beside it closes an edge; not where the bed itself is too wide"],
  ["sealed-off-bed", "it cannot be got to, or closes the way to another"],
  ["narrow-main-way", "no barrow gets to it or past it"],
  ["long-walk", "it stands far from the kitchen door"],
  ["long-hose", "it stands far from the tap"],
  ["bed-in-tree-roots", "it stands in the roots of a tree"],
  ["near-walnut", "it stands where a walnut poisons the ground"],
  ["near-old-paint", "it stands below an old painted wall"],
  ["wheelchair-narrow-way", "no wheelchair gets to it or past it"],
  ["wheelchair-tight-half-turn", "what stands beside it leaves no room to go round its end"],
  ["wheelchair-no-turning-space", "there is no room near it to turn"],
  ["wheelchair-no-passing-space", "the way to it has nowhere to let another by"],
]);
