import { openColumns, proposeHeads } from "../../../src/taskpane/check/ownHeads";

test("known heads are proposed first, then heads that contain a known one as a word", () => {
  expect(proposeHeads("cordons", ["Our block", "Rang", "Vine", "Live spurs 2026"])).toMatchObject({
    block: "Our block",
    row: "Rang",
    vine: "Vine",
    liveSpurs: "Live spurs 2026",
  });
});

test.each([
  "Trunk circumference summer",
  "Trunk girth",
  "Summer trunk (cm)",
  "Perímetro trunk",
  "Trunk dead",
])("%s is not proposed as the trunk's number", (head) => {
  expect(proposeHeads("cordons", ["Block", head])["trunk"]).toBeUndefined();
  expect(proposeHeads("cordons", ["Block", head, "Trunk from ground"])["trunk"]).toBe("Trunk from ground");
});

test("no head is proposed for two columns", () => {
  const proposed = Object.values(proposeHeads("cordons", ["Row vine", "Side"]));
  expect(new Set(proposed).size).toBe(proposed.length);
});

test("needed columns without a head are named", () => {
  const open = openColumns("harvest", { block: "Where" }).map(({ id }) => id);
  expect(open).not.toContain("block");
  expect(open).toContain("year");
});
