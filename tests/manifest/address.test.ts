const { addinAddress, tooHeavy, TRIAL_ADDRESS } = jest.requireActual<{
  addinAddress: (given?: string) => string;
  tooHeavy: (language: string, bytes: { bound: number; shown: number }) => string | undefined;
  TRIAL_ADDRESS: string;
}>("../../webpack.config.js");

describe("the address that the add-in is built for", () => {
  test.each<[string | undefined, string, string]>([
    [undefined, TRIAL_ADDRESS, "the trial address when none is given"],
    ["https://addins.example.org", "https://addins.example.org/", "a slash at the end"],
    ["https://addins.example.org/vines", "https://addins.example.org/vines/", "also below a path"],
    ["https://addins.example.org:8443/vines/", "https://addins.example.org:8443/vines/", "a port stays"],
  ])("%s is %s: %s", (given, address) => {
    expect(addinAddress(given)).toBe(address);
  });

  test.each([
    ["http://addins.example.org/", /over https only/],
    ["addins.example.org", /no address/],
    ["file:///C:/addin/", /over https only/],
    ["https://addins.example.org/?x=1", /nothing may follow the path/],
    ["https://me@addins.example.org/", /no name or password/],
    ["true", /no address/],
  ])("%s is refused in one sentence that names it", (given, why) => {
    expect(() => addinAddress(given)).toThrow(why);
    expect(() => addinAddress(given)).toThrow(given);
  });
});

test("a build that fetches more than it may before something is there fails in one sentence", () => {
  expect(tooHeavy("en", { bound: 110_000, shown: 150_000 })).toBeUndefined();
  expect(tooHeavy("es", { bound: 110_900, shown: 150_000 })).toBe(
    "es: functions are bound after 110.9 kB gzip, at most 110.0 kB were expected.",
  );
  expect(tooHeavy("fr", { bound: 90_000, shown: 151_000 })).toBe(
    "fr: the first page is shown after 151.0 kB gzip, at most 150.0 kB were expected.",
  );
});
