import { plainText } from "../garden/plain-text.ts";
import { say } from "../words/say.ts";
import type { LonLat } from "./tangent-plane.ts";

/** One outline of a file: a plot, a house. */
export interface Parcel {
  /** By what it is called or numbered in the file; "Outline 3" where there is nothing of the kind. */
  readonly label: string;
  /** Corners in order, the first not repeated. */
  readonly outline: readonly LonLat[];
  /** Rings cut out of it, which a yard cannot have. */
  readonly holes: number;
}

/** Why a file is not one outlines can be read from. `message` is one sentence for the person who tried. */
export class ParcelFileError extends Error {
  override readonly name = "ParcelFileError";
  /** Where the trouble lies, such as "features[2].geometry"; empty for the whole file. */
  readonly path: string;
  readonly reason: string;

  constructor(path: string, reason: string) {
    super(say`This file cannot be used: ${path === "" ? reason : `${path} ${reason}`}.`);
    this.path = path;
    this.reason = reason;
  }
}

/** Letters; a county's extract of a street is a few hundred thousand. */
const LONGEST_FILE = 20_000_000;
const MOST_PARCELS = 5000;
const MOST_CORNERS = 5000;
const LONGEST_LABEL = 60;

/**
 * Reads the outlines out of the text of a GeoJSON file (RFC 7946): polygons alone, in features, collections or bare.
 *
 * @returns at least one
 * @throws ParcelFileError for a file that is too large, no JSON, no GeoJSON, in other coordinates than longitude and
 *   latitude, with a polygon that is none, or without any polygon
 */
export function readParcels(text: string): readonly Parcel[] {
  if (text.length > LONGEST_FILE)
    throw new ParcelFileError("", say`it is over 20 MB: cut it down to your street`);
  const json = parsed(text);
  if (!isRecord(json)) throw new ParcelFileError("", say`it is not GeoJSON`);
  refuseOtherCoordinates(json);
  const parcels: Parcel[] = [];
  gather(json, "", {}, parcels, 0);
  if (parcels.length === 0)
    throw new ParcelFileError("", say`there is no outline in it, only points or lines`);
  return parcels.map((parcel, i) =>
    parcel.label === "" ? { ...parcel, label: say`Outline ${i + 1}` } : parcel,
  );
}

type Json = Readonly<Record<string, unknown>>;

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    throw new ParcelFileError("", say`it is not GeoJSON (not JSON)`);
  }
}

/** Files from before RFC 7946 may name other coordinates; those would put the yard somewhere else. */
function refuseOtherCoordinates({ crs }: Json): void {
  if (crs === undefined || crs === null) return;
  const name = isRecord(crs) && isRecord(crs.properties) ? crs.properties.name : undefined;
  if (typeof name === "string" && /(CRS84|EPSG:+4326)$/.test(name)) return;
  throw new ParcelFileError(
    "crs",
    say`names other coordinates than longitude and latitude (WGS 84): export it in those`,
  );
}

/** GeometryCollections may lie in one another; nobody nests them deeper. */
const DEEPEST = 5;

function gather(json: unknown, path: string, properties: Json, into: Parcel[], depth: number): void {
  if (!isRecord(json)) throw new ParcelFileError(path, say`must be a GeoJSON object`);
  if (depth > DEEPEST) throw new ParcelFileError(path, say`is nested too deeply`);
  const at = (field: string) => (path === "" ? field : `${path}.${field}`);
  const each = (list: unknown, field: string, doing: (entry: unknown, where: string) => void) => {
    if (!Array.isArray(list)) throw new ParcelFileError(at(field), say`must be a list`);
    for (const [i, entry] of list.entries()) doing(entry, `${at(field)}[${i}]`);
  };
  switch (json.type) {
    case "FeatureCollection":
      each(json.features, "features", (feature, where) =>
        gather(feature, where, properties, into, depth + 1),
      );
      return;
    case "Feature":
      // A feature without a place is allowed, and has no outline.
      if (json.geometry === null) return;
      gather(
        json.geometry,
        at("geometry"),
        isRecord(json.properties) ? json.properties : {},
        into,
        depth + 1,
      );
      return;
    case "GeometryCollection":
      each(json.geometries, "geometries", (one, where) => gather(one, where, properties, into, depth + 1));
      return;
    case "Polygon":
      add(into, parcelOf(json.coordinates, at("coordinates"), properties));
      return;
    case "MultiPolygon":
      each(json.coordinates, "coordinates", (one, where) => add(into, parcelOf(one, where, properties)));
      return;
    case "Point":
    case "MultiPoint":
    case "LineString":
    case "MultiLineString":
      return;
    default:
      throw new ParcelFileError(at("type"), say`is not a type of GeoJSON`);
  }
}

function add(into: Parcel[], parcel: Parcel): void {
  if (into.length >= MOST_PARCELS) {
    throw new ParcelFileError("", say`it has more than ${MOST_PARCELS} outlines: cut it down to your street`);
  }
  into.push(parcel);
}

function parcelOf(rings: unknown, path: string, properties: Json): Parcel {
  if (!Array.isArray(rings) || rings.length === 0)
    throw new ParcelFileError(path, say`must be a list of rings`);
  return { label: labelOf(properties), outline: ringOf(rings[0], `${path}[0]`), holes: rings.length - 1 };
}

function ringOf(raw: unknown, path: string): readonly LonLat[] {
  if (!Array.isArray(raw)) throw new ParcelFileError(path, say`must be a list of places`);
  if (raw.length < 4)
    throw new ParcelFileError(path, say`must have four places or more, the last being the first`);
  if (raw.length > MOST_CORNERS) throw new ParcelFileError(path, say`has more than ${MOST_CORNERS} corners`);
  const places = raw.map((place, i) => placeOf(place, `${path}[${i}]`));
  const [first, last] = [places[0]!, places[places.length - 1]!];
  if (first[0] !== last[0] || first[1] !== last[1]) {
    throw new ParcelFileError(path, say`does not end where it begins`);
  }
  return places.slice(0, -1);
}

function placeOf(raw: unknown, path: string): LonLat {
  if (!Array.isArray(raw) || raw.length < 2)
    throw new ParcelFileError(path, say`must be longitude and latitude`);
  const [lon, lat]: unknown[] = raw;
  if (typeof lon !== "number" || typeof lat !== "number" || !Number.isFinite(lon) || !Number.isFinite(lat)) {
    throw new ParcelFileError(path, say`must be two numbers, longitude and latitude`);
  }
  if (Math.abs(lon) > 180 || Math.abs(lat) > 90) {
    throw new ParcelFileError(path, say`is no longitude and latitude: export the file in those (WGS 84)`);
  }
  return [lon, lat];
}

/** What counties call the field that tells parcels apart; spelled in all ways, so compared without case and marks. */
const LABEL_FIELDS = [
  "name",
  "siteaddress",
  "situsaddress",
  "address",
  "fulladdress",
  "parcelid",
  "parcelnumber",
  "apn",
  "pin",
  "id",
];

function labelOf(properties: Json): string {
  const plain = new Map(
    Object.entries(properties).map(([key, value]) => [key.toLowerCase().replace(/[^a-z]/g, ""), value]),
  );
  for (const field of LABEL_FIELDS) {
    const value = plain.get(field);
    const text =
      typeof value === "number" ? String(value) : typeof value === "string" ? plainText(value).trim() : "";
    if (text !== "") return [...text].slice(0, LONGEST_LABEL).join("");
  }
  return "";
}

const isRecord = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);
