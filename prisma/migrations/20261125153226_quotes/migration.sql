-- CreateTable
CREATE TABLE "Quote" (
    "id" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "clientId" TEXT NOT NULL,
    "enquiryId" TEXT,
    "number" TEXT,
    "state" TEXT NOT NULL DEFAULT 'draft',
    "validUntil" DATE,
    "currentId" TEXT,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Quote_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "QuoteRevision" (
    "id" TEXT NOT NULL,
    "quoteId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "series" INTEGER NOT NULL,
    "revision" INTEGER NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'draft',
    "draft" JSONB NOT NULL,
    "number" TEXT,
    "title" TEXT,
    "document" JSONB,
    "working" JSONB,
    "documentHash" TEXT,
    "paperId" TEXT,
    "tokenHash" TEXT,
    "sentAt" TIMESTAMP(3),
    "sentBy" TEXT,
    "validUntil" DATE,
    "total" TEXT,
    "acceptance" JSONB,
    "acceptedWorking" JSONB,
    "decline" JSONB,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdBy" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "QuoteRevision_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Quote_number_key" ON "Quote"("number");

-- CreateIndex
CREATE INDEX "Quote_clientId_idx" ON "Quote"("clientId");

-- CreateIndex
CREATE INDEX "Quote_state_idx" ON "Quote"("state");

-- CreateIndex
CREATE INDEX "Quote_enquiryId_idx" ON "Quote"("enquiryId");

-- CreateIndex
CREATE UNIQUE INDEX "QuoteRevision_tokenHash_key" ON "QuoteRevision"("tokenHash");

-- CreateIndex
CREATE UNIQUE INDEX "QuoteRevision_quoteId_series_revision_key" ON "QuoteRevision"("quoteId", "series", "revision");

-- AddForeignKey
ALTER TABLE "Quote" ADD CONSTRAINT "Quote_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "QuoteRevision" ADD CONSTRAINT "QuoteRevision_quoteId_fkey" FOREIGN KEY ("quoteId") REFERENCES "Quote"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "QuoteRevision" ADD CONSTRAINT "QuoteRevision_paperId_fkey" FOREIGN KEY ("paperId") REFERENCES "StoredDocument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What was sent is never changed and never removed: only its state, its link and its one answer may be set. While a
-- transaction says that it is removing the demo (set local scantling.removing_demo = 'on'), quotes of the demo may go.
CREATE FUNCTION "keepSentRevision"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  answered text[] := ARRAY['state', 'tokenHash', 'acceptance', 'acceptedWorking', 'decline', 'total', 'version', 'updatedAt'];
BEGIN
  IF OLD."sentAt" IS NULL THEN
    IF TG_OP = 'DELETE' THEN
      RETURN OLD;
    END IF;
    RETURN NEW;
  END IF;
  IF TG_OP = 'DELETE' THEN
    IF current_setting('scantling.removing_demo', true) = 'on'
      AND EXISTS (SELECT 1 FROM "Quote" WHERE "id" = OLD."quoteId" AND "isDemo") THEN
      RETURN OLD;
    END IF;
    RAISE EXCEPTION 'a quote that was sent is never removed';
  END IF;
  IF to_jsonb(NEW) - answered = to_jsonb(OLD) - answered
    AND NEW."state" <> 'draft'
    AND (OLD."decline" IS NULL OR NEW."decline" = OLD."decline")
    AND (OLD."acceptance" IS NULL OR to_jsonb(NEW) - 'version' - 'updatedAt' = to_jsonb(OLD) - 'version' - 'updatedAt') THEN
    RETURN NEW;
  END IF;
  RAISE EXCEPTION 'a quote that was sent is never changed';
END $$;

CREATE FUNCTION "keepSentRevisions"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'quotes that were sent are never removed';
END $$;

CREATE TRIGGER "QuoteRevision_keep" BEFORE UPDATE OR DELETE ON "QuoteRevision"
  FOR EACH ROW EXECUTE FUNCTION "keepSentRevision"();
CREATE TRIGGER "QuoteRevision_keep_all" BEFORE TRUNCATE ON "QuoteRevision"
  FOR EACH STATEMENT EXECUTE FUNCTION "keepSentRevisions"();
