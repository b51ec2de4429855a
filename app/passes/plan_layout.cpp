// How a pass plan's view is laid out; what it does stands in plan_view.cpp.
#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

#include "app/passes/plan_view.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"

namespace wm::app {

PlanView::PlanView(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(18, 14, 18, 12);
  down->setSpacing(8);
  title_ = role_label("large");
  title_->setObjectName("plan_title");
  down->addWidget(title_);
  auto* across = new QHBoxLayout;
  across->setSpacing(18);
  across->addWidget(make_fields(), 2);
  across->addWidget(make_plan(), 5);
  down->addLayout(across, 1);
  down->addWidget(make_buttons());
}

QLineEdit* PlanView::size_field(const QString& words, const char* name) {
  auto* field = new QLineEdit;
  field->setObjectName(name);
  field->setAccessibleName(words);
  auto* row = new QWidget;
  auto* down = new QVBoxLayout(row);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(1);
  down->addWidget(role_label("quiet", words));
  down->addWidget(field);
  rows_.emplace_back(field, row);
  connect(field, &QLineEdit::textEdited, this, [this, field] {
    const bool of_the_board = field != final_ && field != marks_ && field != measured_;
    if (of_the_board) forget_what_was_seen();
    show_plan();
  });
  return field;
}

QWidget* PlanView::make_fields() {
  auto* box = new QWidget;
  box->setMaximumWidth(260);
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(5);
  machine_ = new QComboBox;
  machine_->setObjectName("plan_machine");
  machine_->setAccessibleName(tr("Machine"));
  machine_->setPlaceholderText(tr("choose"));
  down->addWidget(role_label("quiet", tr("Machine")));
  down->addWidget(machine_);
  joint_ = new QComboBox;
  joint_->setObjectName("plan_joint");
  joint_->setAccessibleName(tr("Face or edge"));
  joint_->addItem(tr("a face"));
  joint_->addItem(tr("an edge"));
  crown_ = new QCheckBox(tr("&Crown up: it does not rock"));
  crown_->setObjectName("plan_crown");
  fence_ = new QCheckBox(tr("&Fence at 90°, tried with a square"));
  fence_->setObjectName("plan_fence");
  length_ = size_field(tr("Length"), "plan_length");
  width_ = size_field(tr("Width"), "plan_width");
  thickest_ = size_field(tr("Thickest place, as measured"), "plan_thickest");
  uneven_ = size_field(tr("Where nobody measured, thicker by"), "plan_uneven");
  final_ = size_field(tr("Final thickness"), "plan_final");
  marks_ = size_field(tr("The caliper reads to"), "plan_marks");
  uneven_->setPlaceholderText(tr("0 where all of it was measured"));
  measured_ = size_field(tr("Measured where it was cut"), "plan_measured");
  measured_->setPlaceholderText(tr("after a pass that cut"));
  hollow_ = size_field(tr("Hollow: the gap under a straightedge"), "plan_hollow");
  for (const auto& [field, row] : rows_) down->addWidget(row);
  joint_row_ = new QWidget;
  auto* rest = new QVBoxLayout(joint_row_);
  rest->setContentsMargins(0, 4, 0, 0);
  for (QWidget* each : std::initializer_list<QWidget*>{joint_, crown_, fence_}) rest->addWidget(each);
  down->addWidget(joint_row_);
  card_words_ = role_label("quiet");
  card_words_->setObjectName("plan_card");
  down->addSpacing(4);
  down->addWidget(card_words_);
  down->addStretch(1);
  for (QComboBox* each : {machine_, joint_})
    connect(each, &QComboBox::currentIndexChanged, this, &PlanView::forget_what_was_seen);
  connect(machine_, &QComboBox::currentIndexChanged, this, &PlanView::show_fields);
  connect(joint_, &QComboBox::currentIndexChanged, this, &PlanView::show_plan);
  for (QCheckBox* each : {crown_, fence_}) connect(each, &QCheckBox::toggled, this, &PlanView::show_plan);
  return box;
}

QWidget* PlanView::make_plan() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(8);
  said_ = role_label("body");
  said_->setObjectName("plan_said");
  lines_ = new QTableWidget(0, 5);
  lines_->setObjectName("plan_lines");
  lines_->setAccessibleName(tr("The passes, one by one"));
  lines_->setHorizontalHeaderLabels(
      {tr("How"), tr("Set to"), tr("Wheel, divisions"), tr("Cuts at most"), tr("Measure")});
  lines_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  lines_->setSelectionBehavior(QAbstractItemView::SelectRows);
  lines_->setWordWrap(true);
  lines_->setShowGrid(false);
  lines_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  lines_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  lines_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  lines_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  lines_->verticalHeader()->hide();
  drawing_ = new PlanDrawing;
  cautions_ = role_label("quiet");
  cautions_->setObjectName("plan_cautions");
  down->addWidget(said_);
  down->addWidget(lines_, 5);
  down->addWidget(drawing_, 4);
  down->addWidget(cautions_);
  down->addStretch(0);
  return box;
}

QWidget* PlanView::make_buttons() {
  auto* box = new QWidget;
  auto* across = new QHBoxLayout(box);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(10);
  auto* back = new KeyButton(tr("Back to the sheet"), QKeySequence("Esc"));
  back->setObjectName("plan_back");
  pdf_ = new KeyButton(tr("PDF"), QKeySequence::Save);
  pdf_->setObjectName("plan_pdf");
  print_ = new KeyButton(tr("Print"), QKeySequence::Print);
  print_->setObjectName("plan_print");
  across->addWidget(back);
  across->addStretch(1);
  across->addWidget(pdf_);
  across->addWidget(print_);
  connect(back, &QPushButton::clicked, this, &PlanView::left);
  connect(pdf_, &QPushButton::clicked, this, &PlanView::ask_for_path);
  connect(print_, &QPushButton::clicked, this, &PlanView::print);
  return box;
}

}  // namespace wm::app
