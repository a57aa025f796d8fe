import { fromMemory, type Source } from "../garden/source.ts";
import { word } from "../words/say.ts";

/** A town to begin with, where nobody knows the latitude of their yard. */
export interface SunPlace {
  readonly name: string;
  readonly country: string;
  /** Degrees, north and east positive, to a tenth: 7 miles at most from the middle of the town. */
  readonly latitude: number;
  readonly longitude: number;
  /** Name of the time zone database. */
  readonly timeZone: string;
}

const FROM_MEMORY = word(
  "latitudes and longitudes of towns to a tenth of a degree, and their time zones; a tenth of a degree moves the sun by as much",
);

/** Its text and the names of towns and countries stand in English: who shows them tells them. */
export const SUN_PLACES_SOURCE: Source = fromMemory(FROM_MEMORY);

/** Towns of the world from north to south, where people garden. */
export const SUN_PLACES: readonly SunPlace[] = (
  [
    [word("Tromsø"), word("Norway"), 69.6, 19, "Europe/Oslo"],
    [word("Fairbanks"), word("United States"), 64.8, -147.7, "America/Anchorage"],
    [word("Reykjavik"), word("Iceland"), 64.1, -21.9, "Atlantic/Reykjavik"],
    [word("Helsinki"), word("Finland"), 60.2, 24.9, "Europe/Helsinki"],
    [word("Edinburgh"), word("United Kingdom"), 56, -3.2, "Europe/London"],
    [word("Copenhagen"), word("Denmark"), 55.7, 12.6, "Europe/Copenhagen"],
    [word("Edmonton"), word("Canada"), 53.5, -113.5, "America/Edmonton"],
    [word("Dublin"), word("Ireland"), 53.3, -6.3, "Europe/Dublin"],
    [word("Berlin"), word("Germany"), 52.5, 13.4, "Europe/Berlin"],
    [word("Amsterdam"), word("Netherlands"), 52.4, 4.9, "Europe/Amsterdam"],
    [word("London"), word("United Kingdom"), 51.5, -0.1, "Europe/London"],
    [word("Kyiv"), word("Ukraine"), 50.5, 30.5, "Europe/Kyiv"],
    [word("Vancouver"), word("Canada"), 49.3, -123.1, "America/Vancouver"],
    [word("Paris"), word("France"), 48.9, 2.4, "Europe/Paris"],
    [word("Vienna"), word("Austria"), 48.2, 16.4, "Europe/Vienna"],
    [word("Seattle"), word("United States"), 47.6, -122.3, "America/Los_Angeles"],
    [word("Minneapolis"), word("United States"), 45, -93.3, "America/Chicago"],
    [word("Toronto"), word("Canada"), 43.7, -79.4, "America/Toronto"],
    [word("Boise"), word("United States"), 43.6, -116.2, "America/Boise"],
    [word("Sapporo"), word("Japan"), 43.1, 141.4, "Asia/Tokyo"],
    [word("Chicago"), word("United States"), 41.9, -87.6, "America/Chicago"],
    [word("Rome"), word("Italy"), 41.9, 12.5, "Europe/Rome"],
    [word("New York"), word("United States"), 40.7, -74, "America/New_York"],
    [word("Madrid"), word("Spain"), 40.4, -3.7, "Europe/Madrid"],
    [word("Beijing"), word("China"), 39.9, 116.4, "Asia/Shanghai"],
    [word("Denver"), word("United States"), 39.7, -105, "America/Denver"],
    [word("Athens"), word("Greece"), 38, 23.7, "Europe/Athens"],
    [word("San Francisco"), word("United States"), 37.8, -122.4, "America/Los_Angeles"],
    [word("Tokyo"), word("Japan"), 35.7, 139.7, "Asia/Tokyo"],
    [word("Atlanta"), word("United States"), 33.7, -84.4, "America/New_York"],
    [word("Phoenix"), word("United States"), 33.4, -112.1, "America/Phoenix"],
    [word("Cairo"), word("Egypt"), 30, 31.2, "Africa/Cairo"],
    [word("Austin"), word("United States"), 30.3, -97.7, "America/Chicago"],
    [word("Delhi"), word("India"), 28.6, 77.2, "Asia/Kolkata"],
    [word("Miami"), word("United States"), 25.8, -80.2, "America/New_York"],
    [word("Honolulu"), word("United States"), 21.3, -157.9, "Pacific/Honolulu"],
    [word("Mexico City"), word("Mexico"), 19.4, -99.1, "America/Mexico_City"],
    [word("Bengaluru"), word("India"), 13, 77.6, "Asia/Kolkata"],
    [word("Bogotá"), word("Colombia"), 4.7, -74.1, "America/Bogota"],
    [word("Singapore"), word("Singapore"), 1.3, 103.8, "Asia/Singapore"],
    [word("Nairobi"), word("Kenya"), -1.3, 36.8, "Africa/Nairobi"],
    [word("Lima"), word("Peru"), -12, -77, "America/Lima"],
    [word("Harare"), word("Zimbabwe"), -17.8, 31, "Africa/Harare"],
    [word("São Paulo"), word("Brazil"), -23.6, -46.6, "America/Sao_Paulo"],
    [word("Johannesburg"), word("South Africa"), -26.2, 28, "Africa/Johannesburg"],
    [word("Brisbane"), word("Australia"), -27.5, 153, "Australia/Brisbane"],
    [word("Perth"), word("Australia"), -31.9, 115.9, "Australia/Perth"],
    [word("Santiago"), word("Chile"), -33.4, -70.7, "America/Santiago"],
    [word("Sydney"), word("Australia"), -33.9, 151.2, "Australia/Sydney"],
    [word("Cape Town"), word("South Africa"), -33.9, 18.4, "Africa/Johannesburg"],
    [word("Buenos Aires"), word("Argentina"), -34.6, -58.4, "America/Argentina/Buenos_Aires"],
    [word("Adelaide"), word("Australia"), -34.9, 138.6, "Australia/Adelaide"],
    [word("Auckland"), word("New Zealand"), -36.8, 174.8, "Pacific/Auckland"],
    [word("Melbourne"), word("Australia"), -37.8, 145, "Australia/Melbourne"],
    [word("Hobart"), word("Australia"), -42.9, 147.3, "Australia/Hobart"],
    [word("Christchurch"), word("New Zealand"), -43.5, 172.6, "Pacific/Auckland"],
    [word("Punta Arenas"), word("Chile"), -53.2, -70.9, "America/Punta_Arenas"],
  ] as const
).map(([name, country, latitude, longitude, timeZone]) => ({ name, country, latitude, longitude, timeZone }));
