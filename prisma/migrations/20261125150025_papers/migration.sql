-- CreateTable
CREATE TABLE "NumberCounter" (
    "series" TEXT NOT NULL,
    "year" INTEGER NOT NULL,
    "last" INTEGER NOT NULL,

    CONSTRAINT "NumberCounter_pkey" PRIMARY KEY ("series","year")
);

-- CreateTable
CREATE TABLE "IssuedNumber" (
    "series" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "year" INTEGER NOT NULL,
    "count" INTEGER NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "issuedAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "IssuedNumber_pkey" PRIMARY KEY ("series","number")
);

-- CreateTable
CREATE TABLE "StoredDocument" (
    "id" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "fileName" TEXT NOT NULL,
    "mediaType" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "size" INTEGER NOT NULL,
    "bytes" BYTEA NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "StoredDocument_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "IssuedNumber_series_year_idx" ON "IssuedNumber"("series", "year");

-- CreateIndex
CREATE INDEX "StoredDocument_sha256_idx" ON "StoredDocument"("sha256");

-- A stored document is never changed and never removed. While a transaction says that it is removing the demo
-- (set local scantling.removing_demo = 'on'), documents of the demo may go, or become the workshop's own.
CREATE FUNCTION "keepStoredDocument"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF current_setting('scantling.removing_demo', true) = 'on' AND OLD."isDemo" THEN
    IF TG_OP = 'DELETE' THEN
      RETURN OLD;
    END IF;
    IF to_jsonb(NEW) - 'isDemo' = to_jsonb(OLD) - 'isDemo' THEN
      RETURN NEW;
    END IF;
  END IF;
  RAISE EXCEPTION 'a stored document is never changed or removed';
END $$;

CREATE FUNCTION "keepStoredDocuments"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'stored documents are never removed';
END $$;

CREATE TRIGGER "StoredDocument_keep" BEFORE UPDATE OR DELETE ON "StoredDocument"
  FOR EACH ROW EXECUTE FUNCTION "keepStoredDocument"();
CREATE TRIGGER "StoredDocument_keep_all" BEFORE TRUNCATE ON "StoredDocument"
  FOR EACH STATEMENT EXECUTE FUNCTION "keepStoredDocuments"();
