-- CreateTable
CREATE TABLE "Invoice" (
    "id" TEXT NOT NULL,
    "quoteId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "creditsId" TEXT,
    "revisionId" TEXT,
    "partId" TEXT,
    "issuedOn" DATE NOT NULL,
    "dueOn" DATE NOT NULL,
    "currency" TEXT NOT NULL,
    "total" DECIMAL(18,6) NOT NULL,
    "credited" DECIMAL(18,6) NOT NULL DEFAULT 0,
    "paid" DECIMAL(18,6) NOT NULL DEFAULT 0,
    "owed" DECIMAL(18,6) NOT NULL,
    "document" JSONB NOT NULL,
    "working" JSONB NOT NULL,
    "documentHash" TEXT NOT NULL,
    "paperId" TEXT NOT NULL,
    "issuedBy" TEXT NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Invoice_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Payment" (
    "id" TEXT NOT NULL,
    "invoiceId" TEXT NOT NULL,
    "amount" DECIMAL(18,6) NOT NULL,
    "receivedOn" DATE NOT NULL,
    "method" TEXT NOT NULL,
    "reference" TEXT NOT NULL DEFAULT '',
    "reversesId" TEXT,
    "reason" TEXT NOT NULL DEFAULT '',
    "receiptNumber" TEXT,
    "receiptId" TEXT,
    "createdBy" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Payment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "DeliveryNote" (
    "id" TEXT NOT NULL,
    "quoteId" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "deliveredOn" DATE NOT NULL,
    "document" JSONB NOT NULL,
    "paperId" TEXT NOT NULL,
    "createdBy" TEXT NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "DeliveryNote_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Reminder" (
    "id" TEXT NOT NULL,
    "invoiceId" TEXT NOT NULL,
    "sentOn" DATE NOT NULL,
    "mailedTo" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "createdBy" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Reminder_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Invoice_number_key" ON "Invoice"("number");

-- CreateIndex
CREATE INDEX "Invoice_quoteId_idx" ON "Invoice"("quoteId");

-- CreateIndex
CREATE INDEX "Invoice_creditsId_idx" ON "Invoice"("creditsId");

-- CreateIndex
CREATE INDEX "Invoice_dueOn_idx" ON "Invoice"("dueOn");

-- CreateIndex
CREATE UNIQUE INDEX "Payment_reversesId_key" ON "Payment"("reversesId");

-- CreateIndex
CREATE UNIQUE INDEX "Payment_receiptNumber_key" ON "Payment"("receiptNumber");

-- CreateIndex
CREATE INDEX "Payment_invoiceId_idx" ON "Payment"("invoiceId");

-- CreateIndex
CREATE UNIQUE INDEX "DeliveryNote_number_key" ON "DeliveryNote"("number");

-- CreateIndex
CREATE INDEX "DeliveryNote_quoteId_idx" ON "DeliveryNote"("quoteId");

-- CreateIndex
CREATE UNIQUE INDEX "Reminder_invoiceId_sentOn_key" ON "Reminder"("invoiceId", "sentOn");

-- AddForeignKey
ALTER TABLE "Invoice" ADD CONSTRAINT "Invoice_quoteId_fkey" FOREIGN KEY ("quoteId") REFERENCES "Quote"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Invoice" ADD CONSTRAINT "Invoice_creditsId_fkey" FOREIGN KEY ("creditsId") REFERENCES "Invoice"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Invoice" ADD CONSTRAINT "Invoice_paperId_fkey" FOREIGN KEY ("paperId") REFERENCES "StoredDocument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Payment" ADD CONSTRAINT "Payment_invoiceId_fkey" FOREIGN KEY ("invoiceId") REFERENCES "Invoice"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Payment" ADD CONSTRAINT "Payment_reversesId_fkey" FOREIGN KEY ("reversesId") REFERENCES "Payment"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Payment" ADD CONSTRAINT "Payment_receiptId_fkey" FOREIGN KEY ("receiptId") REFERENCES "StoredDocument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "DeliveryNote" ADD CONSTRAINT "DeliveryNote_quoteId_fkey" FOREIGN KEY ("quoteId") REFERENCES "Quote"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "DeliveryNote" ADD CONSTRAINT "DeliveryNote_paperId_fkey" FOREIGN KEY ("paperId") REFERENCES "StoredDocument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reminder" ADD CONSTRAINT "Reminder_invoiceId_fkey" FOREIGN KEY ("invoiceId") REFERENCES "Invoice"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What was issued is never changed and never removed: of an invoice only what was credited and paid since may be set,
-- of a payment, delivery note or reminder nothing. While a transaction says that it is removing the demo
-- (set local scantling.removing_demo = 'on'), records of the demo may go.
CREATE FUNCTION "keepIssuedPaper"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  settled text[] := ARRAY['credited', 'paid', 'owed'];
  removed jsonb := to_jsonb(OLD);
  belongs boolean;
BEGIN
  IF TG_OP = 'UPDATE' THEN
    IF TG_TABLE_NAME = 'Invoice' AND to_jsonb(NEW) - settled = to_jsonb(OLD) - settled THEN
      RETURN NEW;
    END IF;
    RAISE EXCEPTION 'what was issued is never changed';
  END IF;
  IF current_setting('scantling.removing_demo', true) = 'on' THEN
    IF removed ? 'isDemo' THEN
      belongs := (removed->>'isDemo')::boolean;
    ELSE
      belongs := EXISTS (SELECT 1 FROM "Invoice" WHERE "id" = removed->>'invoiceId' AND "isDemo");
    END IF;
    IF belongs THEN
      RETURN OLD;
    END IF;
  END IF;
  RAISE EXCEPTION 'what was issued is never removed';
END $$;

CREATE FUNCTION "keepIssuedPapers"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'what was issued is never removed';
END $$;

CREATE TRIGGER "Invoice_keep" BEFORE UPDATE OR DELETE ON "Invoice"
  FOR EACH ROW EXECUTE FUNCTION "keepIssuedPaper"();
CREATE TRIGGER "Invoice_keep_all" BEFORE TRUNCATE ON "Invoice"
  FOR EACH STATEMENT EXECUTE FUNCTION "keepIssuedPapers"();

CREATE TRIGGER "Payment_keep" BEFORE UPDATE OR DELETE ON "Payment"
  FOR EACH ROW EXECUTE FUNCTION "keepIssuedPaper"();
CREATE TRIGGER "Payment_keep_all" BEFORE TRUNCATE ON "Payment"
  FOR EACH STATEMENT EXECUTE FUNCTION "keepIssuedPapers"();

CREATE TRIGGER "DeliveryNote_keep" BEFORE UPDATE OR DELETE ON "DeliveryNote"
  FOR EACH ROW EXECUTE FUNCTION "keepIssuedPaper"();
CREATE TRIGGER "DeliveryNote_keep_all" BEFORE TRUNCATE ON "DeliveryNote"
  FOR EACH STATEMENT EXECUTE FUNCTION "keepIssuedPapers"();

CREATE TRIGGER "Reminder_keep" BEFORE UPDATE OR DELETE ON "Reminder"
  FOR EACH ROW EXECUTE FUNCTION "keepIssuedPaper"();
CREATE TRIGGER "Reminder_keep_all" BEFORE TRUNCATE ON "Reminder"
  FOR EACH STATEMENT EXECUTE FUNCTION "keepIssuedPapers"();
