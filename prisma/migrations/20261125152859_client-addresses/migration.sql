-- AlterTable
ALTER TABLE "Client"
ADD COLUMN     "addressLines" TEXT[],
ADD COLUMN     "countryCode" TEXT,
ADD COLUMN     "phone" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "taxNumber" TEXT NOT NULL DEFAULT '';

-- An address that was one text keeps its lines: seven at most, a hundred characters each, what is over in the notes.
UPDATE "Client" SET
  "addressLines" = coalesce((
    SELECT array_agg(left(line, 100) ORDER BY at) FILTER (WHERE at <= 7)
    FROM (
      SELECT trim(line) AS line, row_number() OVER (ORDER BY place) AS at
      FROM regexp_split_to_table("address", E'[\\r\\n]+') WITH ORDINALITY AS lines (line, place)
      WHERE trim(line) <> ''
    ) AS kept
  ), ARRAY[]::TEXT[]);
UPDATE "Client" SET "notes" = trim(E'\n' FROM "notes" || E'\n' || "address")
WHERE array_to_string("addressLines", '') <> regexp_replace("address", E'\\s*[\\r\\n]+\\s*|^\\s+|\\s+$', '', 'g');

ALTER TABLE "Client" DROP COLUMN "address";
