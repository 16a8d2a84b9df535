import { createApiToken } from './api-tokens/create-api-token.ts';
import { listApiTokens } from './api-tokens/list-api-tokens.ts';
import { revokeApiToken } from './api-tokens/revoke-api-token.ts';
import { boardMeasure } from './calculations/board-measure.ts';
import { costSheet } from './calculations/cost-sheet.ts';
import { cuttingPlan } from './calculations/cutting-plan.ts';
import { depreciationSchedule } from './calculations/depreciation-schedule.ts';
import { earlyPrice } from './calculations/early-price.ts';
import { finishQuantity } from './calculations/finish-quantity.ts';
import { labourRate } from './calculations/labour-rate.ts';
import { learningCurve } from './calculations/learning-curve.ts';
import { machineHourRate } from './calculations/machine-hour-rate.ts';
import { overheadRate } from './calculations/overhead-rate.ts';
import { price } from './calculations/price.ts';
import { priceWorkbook } from './calculations/price-workbook.ts';
import { quoteTotals } from './calculations/quote-totals.ts';
import { resaw } from './calculations/resaw.ts';
import { risk } from './calculations/risk.ts';
import { sensitivity } from './calculations/sensitivity.ts';
import { solve } from './calculations/solve.ts';
import { whatIf } from './calculations/what-if.ts';
import { createClient } from './clients/create-client.ts';
import { editClient } from './clients/edit-client.ts';
import { getClient } from './clients/get-client.ts';
import { listClients } from './clients/list-clients.ts';
import { removeClient } from './clients/remove-client.ts';
import type { Contract } from './contract.ts';
import { compareCostSheets } from './cost-sheets/compare-cost-sheets.ts';
import { createCostSheet } from './cost-sheets/create-cost-sheet.ts';
import { downloadCostSheet } from './cost-sheets/download-cost-sheet.ts';
import { editCostSheet } from './cost-sheets/edit-cost-sheet.ts';
import { getCostSheet } from './cost-sheets/get-cost-sheet.ts';
import { getMaterialPrice } from './cost-sheets/get-material-price.ts';
import { listCostSheets } from './cost-sheets/list-cost-sheets.ts';
import { removeCostSheet } from './cost-sheets/remove-cost-sheet.ts';
import { solveCostSheet } from './cost-sheets/solve-cost-sheet.ts';
import { tryCostSheet } from './cost-sheets/try-cost-sheet.ts';
import { workOutCostSheet } from './cost-sheets/work-out-cost-sheet.ts';
import { workOutRisk } from './cost-sheets/work-out-risk.ts';
import { workOutSensitivity } from './cost-sheets/work-out-sensitivity.ts';
import { createDeliveryNote } from './delivery-notes/create-delivery-note.ts';
import { getDeliveryNote } from './delivery-notes/get-delivery-note.ts';
import { listDeliveryNotes } from './delivery-notes/list-delivery-notes.ts';
import { loadDemo } from './demo/load-demo.ts';
import { removeDemo } from './demo/remove-demo.ts';
import { addDesignPicture } from './designs/add-design-picture.ts';
import { compareDesignRevisions } from './designs/compare-design-revisions.ts';
import { createDesign } from './designs/create-design.ts';
import { editDesign } from './designs/edit-design.ts';
import { editDesignPictures } from './designs/edit-design-pictures.ts';
import { exportBill } from './designs/export-bill.ts';
import { getDesign } from './designs/get-design.ts';
import { getDesignPictures } from './designs/get-design-pictures.ts';
import { getDesignRevision } from './designs/get-design-revision.ts';
import { importBill } from './designs/import-bill.ts';
import { listDesignRevisions } from './designs/list-design-revisions.ts';
import { listDesigns } from './designs/list-designs.ts';
import { removeDesign } from './designs/remove-design.ts';
import { restoreDesignRevision } from './designs/restore-design-revision.ts';
import { getDocument } from './documents/get-document.ts';
import { addEnquiryHours } from './enquiries/add-enquiry-hours.ts';
import { addEnquiryPicture } from './enquiries/add-enquiry-picture.ts';
import { createEnquiry } from './enquiries/create-enquiry.ts';
import { editEnquiry } from './enquiries/edit-enquiry.ts';
import { editEnquiryPictures } from './enquiries/edit-enquiry-pictures.ts';
import { getEarlyPrice } from './enquiries/get-early-price.ts';
import { getEnquiry } from './enquiries/get-enquiry.ts';
import { getEnquiryPictures } from './enquiries/get-enquiry-pictures.ts';
import { getEnquiryResults } from './enquiries/get-enquiry-results.ts';
import { getPastPiece } from './enquiries/get-past-piece.ts';
import { keepEarlyPrice } from './enquiries/keep-early-price.ts';
import { listEarlyPrices } from './enquiries/list-early-prices.ts';
import { listEnquiries } from './enquiries/list-enquiries.ts';
import { listEnquiryHours } from './enquiries/list-enquiry-hours.ts';
import { removeEnquiry } from './enquiries/remove-enquiry.ts';
import { removeEnquiryHours } from './enquiries/remove-enquiry-hours.ts';
import { createExchangeRate } from './exchange-rates/create-exchange-rate.ts';
import { listExchangeRates } from './exchange-rates/list-exchange-rates.ts';
import { creditInvoice } from './invoices/credit-invoice.ts';
import { enterPayment } from './invoices/enter-payment.ts';
import { getInvoice } from './invoices/get-invoice.ts';
import { getStatement } from './invoices/get-statement.ts';
import { issueInvoice } from './invoices/issue-invoice.ts';
import { listInvoices } from './invoices/list-invoices.ts';
import { listOverdue } from './invoices/list-overdue.ts';
import { remind } from './invoices/remind.ts';
import { reversePayment } from './invoices/reverse-payment.ts';
import { workOutInvoice } from './invoices/work-out-invoice.ts';
import { createLabourGrade } from './labour-grades/create-labour-grade.ts';
import { downloadLabourRates } from './labour-grades/download-labour-rates.ts';
import { editLabourGrade } from './labour-grades/edit-labour-grade.ts';
import { getLabourGrade } from './labour-grades/get-labour-grade.ts';
import { getLabourRates } from './labour-grades/get-labour-rates.ts';
import { listLabourGrades } from './labour-grades/list-labour-grades.ts';
import { removeLabourGrade } from './labour-grades/remove-labour-grade.ts';
import { cancelMail } from './mail/cancel-mail.ts';
import { getMail } from './mail/get-mail.ts';
import { getMailService } from './mail/get-mail-service.ts';
import { listMails } from './mail/list-mails.ts';
import { mailPaper } from './mail/mail-paper.ts';
import { proposePaperMail } from './mail/propose-paper-mail.ts';
import { resendMail } from './mail/resend-mail.ts';
import { createMaterial } from './materials/create-material.ts';
import { editMaterial } from './materials/edit-material.ts';
import { getMaterial } from './materials/get-material.ts';
import { listMaterials } from './materials/list-materials.ts';
import { removeMaterial } from './materials/remove-material.ts';
import { acceptOffer } from './offers/accept-offer.ts';
import { declineOffer } from './offers/decline-offer.ts';
import { getOfferPaper } from './offers/get-offer-paper.ts';
import { getOfferPicture } from './offers/get-offer-picture.ts';
import { readOffer } from './offers/read-offer.ts';
import { createOverheadAmount } from './overhead/create-overhead-amount.ts';
import { downloadOverheadRecovery } from './overhead/download-overhead-recovery.ts';
import { editOverheadAmount } from './overhead/edit-overhead-amount.ts';
import { getOverheadAmount } from './overhead/get-overhead-amount.ts';
import { getOverheadRecovery } from './overhead/get-overhead-recovery.ts';
import { listOverheadAmounts } from './overhead/list-overhead-amounts.ts';
import { removeOverheadAmount } from './overhead/remove-overhead-amount.ts';
import { applyChanges } from './own-values/apply-changes.ts';
import { previewChanges } from './own-values/preview-changes.ts';
import { takeBackOwnValue } from './own-values/take-back-own-value.ts';
import { createPerson } from './people/create-person.ts';
import { editPerson } from './people/edit-person.ts';
import { getPerson } from './people/get-person.ts';
import { listPeople } from './people/list-people.ts';
import { removePerson } from './people/remove-person.ts';
import { getPicture } from './pictures/get-picture.ts';
import { uploadPicture } from './pictures/upload-picture.ts';
import { decidePriceImpact } from './price-impacts/decide-price-impact.ts';
import { getPriceImpact } from './price-impacts/get-price-impact.ts';
import { listPriceImpactRows } from './price-impacts/list-price-impact-rows.ts';
import { listPriceImpacts } from './price-impacts/list-price-impacts.ts';
import { workOutPriceImpact } from './price-impacts/work-out-price-impact.ts';
import { applyPriceImport } from './price-lists/apply-price-import.ts';
import { createPriceList } from './price-lists/create-price-list.ts';
import { discardPriceImport } from './price-lists/discard-price-import.ts';
import { getPriceImport } from './price-lists/get-price-import.ts';
import { linkSupplierItem } from './price-lists/link-supplier-item.ts';
import { listMaterialPrices } from './price-lists/list-material-prices.ts';
import { listPriceImportRows } from './price-lists/list-price-import-rows.ts';
import { listPriceImports } from './price-lists/list-price-imports.ts';
import { listPriceLines } from './price-lists/list-price-lines.ts';
import { listPriceLists } from './price-lists/list-price-lists.ts';
import { listSupplierItems } from './price-lists/list-supplier-items.ts';
import { mapPriceImport } from './price-lists/map-price-import.ts';
import { pastePriceImport } from './price-lists/paste-price-import.ts';
import { startPriceImport } from './price-lists/start-price-import.ts';
import { acceptQuote } from './quotes/accept-quote.ts';
import { addToQuote } from './quotes/add-to-quote.ts';
import { compareQuote } from './quotes/compare-quote.ts';
import { createQuote } from './quotes/create-quote.ts';
import { declineQuote } from './quotes/decline-quote.ts';
import { downloadQuoteLine } from './quotes/download-quote-line.ts';
import { editQuoteDraft } from './quotes/edit-quote-draft.ts';
import { getQuote } from './quotes/get-quote.ts';
import { getQuoteRevision } from './quotes/get-quote-revision.ts';
import { listQuotes } from './quotes/list-quotes.ts';
import { previewQuote } from './quotes/preview-quote.ts';
import { previewQuotePaper } from './quotes/preview-quote-paper.ts';
import { removeQuoteDraft } from './quotes/remove-quote-draft.ts';
import { renewOfferLink } from './quotes/renew-offer-link.ts';
import { reviseQuote } from './quotes/revise-quote.ts';
import { sendQuote } from './quotes/send-quote.ts';
import { withdrawQuote } from './quotes/withdraw-quote.ts';
import { workOutQuote } from './quotes/work-out-quote.ts';
import { workOutQuoteDraft } from './quotes/work-out-quote-draft.ts';
import { workOutQuoteLine } from './quotes/work-out-quote-line.ts';
import { createScenario } from './scenarios/create-scenario.ts';
import { editScenario } from './scenarios/edit-scenario.ts';
import { listScenarios } from './scenarios/list-scenarios.ts';
import { removeScenario } from './scenarios/remove-scenario.ts';
import { workOutScenario } from './scenarios/work-out-scenario.ts';
import { workOutWhatIf } from './scenarios/work-out-what-if.ts';
import { getHealth } from './service/get-health.ts';
import { getReadiness } from './service/get-readiness.ts';
import { getSession } from './sign-in/get-session.ts';
import { setUpOwner } from './sign-in/set-up-owner.ts';
import { createSupplier } from './suppliers/create-supplier.ts';
import { editSupplier } from './suppliers/edit-supplier.ts';
import { getSupplier } from './suppliers/get-supplier.ts';
import { listSuppliers } from './suppliers/list-suppliers.ts';
import { removeSupplier } from './suppliers/remove-supplier.ts';
import { createTool } from './tools/create-tool.ts';
import { downloadToolRates } from './tools/download-tool-rates.ts';
import { downloadToolRegister } from './tools/download-tool-register.ts';
import { editTool } from './tools/edit-tool.ts';
import { getTool } from './tools/get-tool.ts';
import { getToolRates } from './tools/get-tool-rates.ts';
import { getToolRegister } from './tools/get-tool-register.ts';
import { getToolSchedule } from './tools/get-tool-schedule.ts';
import { listToolRates } from './tools/list-tool-rates.ts';
import { listTools } from './tools/list-tools.ts';
import { removeTool } from './tools/remove-tool.ts';
import { changeRole } from './users/change-role.ts';
import { createUser } from './users/create-user.ts';
import { listUsers } from './users/list-users.ts';
import { removeUser } from './users/remove-user.ts';
import { editWorkshop } from './workshop/edit-workshop.ts';
import { getWorkshop } from './workshop/get-workshop.ts';

/** Every route of the API, one line each. */
export const ALL_CONTRACTS: readonly Contract[] = [
  getHealth,
  getReadiness,
  getSession,
  setUpOwner,
  listUsers,
  createUser,
  changeRole,
  removeUser,
  listApiTokens,
  createApiToken,
  revokeApiToken,
  loadDemo,
  removeDemo,
  listDesigns,
  getDesign,
  createDesign,
  editDesign,
  removeDesign,
  compareDesignRevisions,
  getDesignRevision,
  listDesignRevisions,
  restoreDesignRevision,
  getDesignPictures,
  addDesignPicture,
  editDesignPictures,
  importBill,
  exportBill,
  getDocument,
  listMails,
  getMail,
  getMailService,
  mailPaper,
  proposePaperMail,
  resendMail,
  cancelMail,
  uploadPicture,
  getPicture,
  listCostSheets,
  getCostSheet,
  getMaterialPrice,
  createCostSheet,
  editCostSheet,
  removeCostSheet,
  workOutCostSheet,
  downloadCostSheet,
  workOutRisk,
  workOutSensitivity,
  solveCostSheet,
  applyChanges,
  previewChanges,
  takeBackOwnValue,
  createScenario,
  editScenario,
  listScenarios,
  removeScenario,
  workOutScenario,
  workOutWhatIf,
  listEnquiries,
  getEnquiry,
  createEnquiry,
  editEnquiry,
  removeEnquiry,
  listEnquiryHours,
  addEnquiryHours,
  removeEnquiryHours,
  keepEarlyPrice,
  listEarlyPrices,
  getEarlyPrice,
  getPastPiece,
  getEnquiryResults,
  getEnquiryPictures,
  addEnquiryPicture,
  editEnquiryPictures,
  tryCostSheet,
  compareCostSheets,
  getPriceImpact,
  workOutPriceImpact,
  listPriceImpactRows,
  listPriceImpacts,
  decidePriceImpact,
  createClient,
  editClient,
  getClient,
  listClients,
  removeClient,
  createLabourGrade,
  editLabourGrade,
  getLabourGrade,
  listLabourGrades,
  removeLabourGrade,
  createOverheadAmount,
  editOverheadAmount,
  getOverheadAmount,
  listOverheadAmounts,
  removeOverheadAmount,
  createPerson,
  editPerson,
  getPerson,
  listPeople,
  removePerson,
  createTool,
  editTool,
  getTool,
  listToolRates,
  listTools,
  removeTool,
  editWorkshop,
  getWorkshop,
  createExchangeRate,
  listExchangeRates,
  createMaterial,
  removeMaterial,
  editMaterial,
  getMaterial,
  listMaterials,
  applyPriceImport,
  createPriceList,
  discardPriceImport,
  getPriceImport,
  linkSupplierItem,
  listMaterialPrices,
  listPriceImportRows,
  listPriceImports,
  listPriceLines,
  listPriceLists,
  listSupplierItems,
  mapPriceImport,
  pastePriceImport,
  startPriceImport,
  createSupplier,
  removeSupplier,
  editSupplier,
  getSupplier,
  listSuppliers,
  getLabourRates,
  downloadLabourRates,
  getOverheadRecovery,
  downloadOverheadRecovery,
  downloadToolRegister,
  downloadToolRates,
  getToolRates,
  getToolRegister,
  getToolSchedule,
  price,
  priceWorkbook,
  quoteTotals,
  costSheet,
  cuttingPlan,
  boardMeasure,
  depreciationSchedule,
  earlyPrice,
  finishQuantity,
  labourRate,
  learningCurve,
  machineHourRate,
  overheadRate,
  resaw,
  risk,
  sensitivity,
  solve,
  whatIf,
  acceptOffer,
  declineOffer,
  getOfferPaper,
  getOfferPicture,
  readOffer,
  creditInvoice,
  enterPayment,
  getInvoice,
  getStatement,
  issueInvoice,
  listInvoices,
  listOverdue,
  remind,
  reversePayment,
  workOutInvoice,
  createDeliveryNote,
  getDeliveryNote,
  listDeliveryNotes,
  acceptQuote,
  addToQuote,
  compareQuote,
  createQuote,
  declineQuote,
  editQuoteDraft,
  getQuote,
  getQuoteRevision,
  listQuotes,
  previewQuote,
  previewQuotePaper,
  removeQuoteDraft,
  renewOfferLink,
  reviseQuote,
  sendQuote,
  withdrawQuote,
  workOutQuote,
  workOutQuoteDraft,
  workOutQuoteLine,
  downloadQuoteLine,
];
