import { fromMemory, type Source } from "../garden/source.ts";

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

export const SUN_PLACES_SOURCE: Source = fromMemory(
  "latitudes and longitudes of towns to a tenth of a degree, and their time zones; a tenth of a degree moves the sun by as much",
);

/** Towns of the world from north to south, where people garden. */
export const SUN_PLACES: readonly SunPlace[] = (
  [
    ["Tromsø", "Norway", 69.6, 19, "Europe/Oslo"],
    ["Fairbanks", "United States", 64.8, -147.7, "America/Anchorage"],
    ["Reykjavik", "Iceland", 64.1, -21.9, "Atlantic/Reykjavik"],
    ["Helsinki", "Finland", 60.2, 24.9, "Europe/Helsinki"],
    ["Edinburgh", "United Kingdom", 56, -3.2, "Europe/London"],
    ["Copenhagen", "Denmark", 55.7, 12.6, "Europe/Copenhagen"],
    ["Edmonton", "Canada", 53.5, -113.5, "America/Edmonton"],
    ["Dublin", "Ireland", 53.3, -6.3, "Europe/Dublin"],
    ["Berlin", "Germany", 52.5, 13.4, "Europe/Berlin"],
    ["Amsterdam", "Netherlands", 52.4, 4.9, "Europe/Amsterdam"],
    ["London", "United Kingdom", 51.5, -0.1, "Europe/London"],
    ["Kyiv", "Ukraine", 50.5, 30.5, "Europe/Kyiv"],
    ["Vancouver", "Canada", 49.3, -123.1, "America/Vancouver"],
    ["Paris", "France", 48.9, 2.4, "Europe/Paris"],
    ["Vienna", "Austria", 48.2, 16.4, "Europe/Vienna"],
    ["Seattle", "United States", 47.6, -122.3, "America/Los_Angeles"],
    ["Minneapolis", "United States", 45, -93.3, "America/Chicago"],
    ["Toronto", "Canada", 43.7, -79.4, "America/Toronto"],
    ["Boise", "United States", 43.6, -116.2, "America/Boise"],
    ["Sapporo", "Japan", 43.1, 141.4, "Asia/Tokyo"],
    ["Chicago", "United States", 41.9, -87.6, "America/Chicago"],
    ["Rome", "Italy", 41.9, 12.5, "Europe/Rome"],
    ["New York", "United States", 40.7, -74, "America/New_York"],
    ["Madrid", "Spain", 40.4, -3.7, "Europe/Madrid"],
    ["Beijing", "China", 39.9, 116.4, "Asia/Shanghai"],
    ["Denver", "United States", 39.7, -105, "America/Denver"],
    ["Athens", "Greece", 38, 23.7, "Europe/Athens"],
    ["San Francisco", "United States", 37.8, -122.4, "America/Los_Angeles"],
    ["Tokyo", "Japan", 35.7, 139.7, "Asia/Tokyo"],
    ["Atlanta", "United States", 33.7, -84.4, "America/New_York"],
    ["Phoenix", "United States", 33.4, -112.1, "America/Phoenix"],
    ["Cairo", "Egypt", 30, 31.2, "Africa/Cairo"],
    ["Austin", "United States", 30.3, -97.7, "America/Chicago"],
    ["Delhi", "India", 28.6, 77.2, "Asia/Kolkata"],
    ["Miami", "United States", 25.8, -80.2, "America/New_York"],
    ["Honolulu", "United States", 21.3, -157.9, "Pacific/Honolulu"],
    ["Mexico City", "Mexico", 19.4, -99.1, "America/Mexico_City"],
    ["Bengaluru", "India", 13, 77.6, "Asia/Kolkata"],
    ["Bogotá", "Colombia", 4.7, -74.1, "America/Bogota"],
    ["Singapore", "Singapore", 1.3, 103.8, "Asia/Singapore"],
    ["Nairobi", "Kenya", -1.3, 36.8, "Africa/Nairobi"],
    ["Lima", "Peru", -12, -77, "America/Lima"],
    ["Harare", "Zimbabwe", -17.8, 31, "Africa/Harare"],
    ["São Paulo", "Brazil", -23.6, -46.6, "America/Sao_Paulo"],
    ["Johannesburg", "South Africa", -26.2, 28, "Africa/Johannesburg"],
    ["Brisbane", "Australia", -27.5, 153, "Australia/Brisbane"],
    ["Perth", "Australia", -31.9, 115.9, "Australia/Perth"],
    ["Santiago", "Chile", -33.4, -70.7, "America/Santiago"],
    ["Sydney", "Australia", -33.9, 151.2, "Australia/Sydney"],
    ["Cape Town", "South Africa", -33.9, 18.4, "Africa/Johannesburg"],
    ["Buenos Aires", "Argentina", -34.6, -58.4, "America/Argentina/Buenos_Aires"],
    ["Adelaide", "Australia", -34.9, 138.6, "Australia/Adelaide"],
    ["Auckland", "New Zealand", -36.8, 174.8, "Pacific/Auckland"],
    ["Melbourne", "Australia", -37.8, 145, "Australia/Melbourne"],
    ["Hobart", "Australia", -42.9, 147.3, "Australia/Hobart"],
    ["Christchurch", "New Zealand", -43.5, 172.6, "Pacific/Auckland"],
    ["Punta Arenas", "Chile", -53.2, -70.9, "America/Punta_Arenas"],
  ] as const
).map(([name, country, latitude, longitude, timeZone]) => ({ name, country, latitude, longitude, timeZone }));
