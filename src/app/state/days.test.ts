import { afterEach, expect, test } from "vitest";
import { plainStyle, sayDates } from "../../core/clock";
import { dayWords, goneAfter_ms, localDay, momentWords, sizeWords } from "./days";

afterEach(() => sayDates(plainStyle));

const tuesday_ms = new Date(2027, 4, 4, 15, 5).getTime();

test("days and moments are said as all dates of the program are", () => {
  expect(localDay(tuesday_ms)).toBe("2027-05-04");
  expect(momentWords(tuesday_ms)).toBe("Tue 4 May 2027, 15:05");
  sayDates({ order: "month day", hours: 12 });
  expect(dayWords(tuesday_ms)).toBe("Tue May 4, 2027");
  expect(momentWords(tuesday_ms)).toBe("Tue May 4, 2027, 3:05 pm");
});

test("what is thrown away stays for 30 days", () => {
  expect(localDay(goneAfter_ms(new Date(2027, 4, 3, 12).getTime()))).toBe("2027-06-02");
});

test.each([
  [640, "640 bytes"],
  [48_200, "48 kB"],
  [999_700, "1.0 MB"],
  [2_140_000, "2.1 MB"],
])("%d bytes are said as %s", (bytes, said) => {
  expect(sizeWords(bytes)).toBe(said);
});
